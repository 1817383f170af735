using System.Collections.Frozen;
using Witnessmark.Language.Model;

namespace Witnessmark.Comparing;

/// <summary>What a change of each kind of fact or key can do. What is not in a table can hurt: a new key is asked about until somebody has thought of it.</summary>
internal static class FieldClasses
{
    private static readonly FrozenSet<FactWord> MethodFacts = FrozenSet.ToFrozenSet([FactWord.Tools, FactWord.Tool, FactWord.Time, FactWord.Odds]);

    /// <summary>A demand: more of it is tighter, less of it is looser.</summary>
    private static readonly FrozenSet<FactWord> Demands = FrozenSet.ToFrozenSet(
    [
        FactWord.StopIf, FactWord.Requires, FactWord.Hold, FactWord.CheckedBy, FactWord.Checks, FactWord.Count, FactWord.Call, FactWord.Answer, FactWord.Measure,
        FactWord.Inspect, FactWord.Test, FactWord.WorkOut, FactWord.StartsWith, FactWord.EndsWith, FactWord.Owes, FactWord.Recover, FactWord.Wait, FactWord.Zone, FactWord.Decide, FactWord.Until,
    ]);

    private static readonly FrozenSet<string> WordingKeys = FrozenSet.ToFrozenSet(["title", "wording", "because", "spoken", "mark"]);

    private static readonly FrozenSet<string> MethodKeys = FrozenSet.ToFrozenSet(
        ["basis", "gauge", "scale", "driven-by", "crew", "uses-tools", "pitch-circle", "across-flats", "step-words", "steps-in-section", "witness-mark", "language", "paper", "units", "beside"]);

    /// <summary>Keys that name whom or what only the paperwork knows.</summary>
    private static readonly FrozenSet<string> Unread = FrozenSet.ToFrozenSet(["status", "approvals", "authors"]);

    public static bool IsDemand(FactWord word) => Demands.Contains(word);

    /// <summary>Whether the fact of that word asks for something.</summary>
    public static bool IsDemand(string word) => Demands.Any(d => d.Spelled() == word);

    public static ChangeClass Of(FactWord word) => word == FactWord.Was ? ChangeClass.Wording : MethodFacts.Contains(word) || word == FactWord.By ? ChangeClass.Method : ChangeClass.Hazard;

    /// <param name="old">Whether the fact was there.</param>
    /// <param name="made">Whether it is there now.</param>
    public static Sense Of(FactWord word, bool old, bool made)
    {
        if (old == made)
            return Sense.Other;
        // work that is only done sometimes is done less often
        if (word == FactWord.OnlyIf)
            return made ? Sense.Looser : Sense.Tighter;
        return !Demands.Contains(word) ? Sense.Other : made ? Sense.Tighter : Sense.Looser;
    }

    public static ChangeClass Of(string key) =>
        Unread.Contains(key) ? ChangeClass.None
        : WordingKeys.Contains(key) ? ChangeClass.Wording
        : MethodKeys.Contains(key) ? ChangeClass.Method
        : ChangeClass.Hazard;
}
