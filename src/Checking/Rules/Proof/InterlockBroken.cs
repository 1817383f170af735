using Witnessmark.Language.Findings;
using Witnessmark.Proof;

namespace Witnessmark.Checking.Rules.Proof;

/// <summary>On some way through the work a rule of the machine is broken.</summary>
public sealed class InterlockBroken : IWayRule
{
    public static RuleInfo Info { get; } = new("interlock-broken", "Proof", Severity.Fault);

    public static void Check(ProvedWork proved, FindingList findings)
    {
        // what is not followed is not proved
        if (proved.Part.TooManyWays)
            findings.Add(
                Info,
                proved.Part.Part.Name?.At ?? proved.Scope.Procedure.Id.At,
                $"{proved.Scope.Procedure.Id} branches in more ways than can be followed: no rule of the machine is proved of it.",
                "What is not followed can hold a blank that stays in or a load that hangs, and nobody would hear of it.",
                "Decide once and leave a state behind, repeat less often, or split the procedure.");
        foreach (var breach in Telling.Sure(proved, BreachKind.Interlock))
            findings.Add(
                Info,
                breach.At.Place.Step.Name.At,
                breach.Rule!.Never is { } never
                    ? $"{Telling.Begin(breach.At)} comes to what must never be: `{never}` ({breach.Rule.Id})."
                    : $"{Telling.Begin(breach.At)} comes before `{Telling.Written(breach)}` ({breach.Rule.Id}).",
                Telling.Because(breach.Rule, "The data sheet says so for every procedure of this machine."),
                breach.Rule.Never is null
                    ? $"Bring `{Telling.Written(breach)}` about before this step, on every way that leads to it; or move the step."
                    : "Undo the one before the other comes; or move the step.",
                [.. Telling.Story(breach)]);
    }
}
