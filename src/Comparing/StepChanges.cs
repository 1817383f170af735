using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Comparing;

/// <summary>One step in two versions: its name, text, facts and what else is printed with it.</summary>
internal static class StepChanges
{
    public static IEnumerable<Change> Of(StepMatch match)
    {
        var (old, made) = (match.Old.Step, match.New.Step);
        var where = Where(match.New);
        // what stands there for long is compared with what was said of it
        if (match.ByWas && match.Likeness < Unlike)
            yield return new Change(ChangeClass.Hazard, where, "was", old.Name.Value, made.Name.Value)
            {
                Because = $"`was:` makes one step of two that have {match.Likeness:0 %} in common",
                OldAt = old.Name.At,
                NewAt = made.Name.At,
            };
        if (old.Name.Value != made.Name.Value)
            yield return Text(where, "name", old.Name.Value, made.Name.Value) with { OldAt = old.Name.At, NewAt = made.Name.At };
        if (Meaning.Of(old.Text) != Meaning.Of(made.Text))
            yield return Text(where, "text", old.Text.Plain(), made.Text.Plain()) with { OldAt = old.At, NewAt = made.At };
        if (Meaning.Of(old.Remarks) != Meaning.Of(made.Remarks))
            yield return Text(where, "remark", Lines(old.Remarks), Lines(made.Remarks)) with { OldAt = old.At, NewAt = made.At };
        if (Meaning.Of(old.Blocks) != Meaning.Of(made.Blocks))
            yield return Text(where, "further text", BlockText.Of(old.Blocks), BlockText.Of(made.Blocks)) with { OldAt = old.At, NewAt = made.At };
        foreach (var change in FactChanges.Between(where, old.Facts, made.Facts))
            yield return change.What is "by" or "checked-by" ? Watched(change, DoerChecks(match.Old), DoerChecks(match.New)) : change;
    }

    private static Change Watched(Change change, bool old, bool made) => (old, made) switch
    {
        (false, true) => change with { Class = ChangeClass.Hazard, Sense = Sense.Looser, Because = "who does the work now checks it himself" },
        (true, false) when change.New is not null => change with { Class = ChangeClass.Hazard, Sense = Sense.Tighter, Because = "who does the work no longer checks it himself" },
        _ => change,
    };

    private static bool DoerChecks(StepInPlace place) => place.Step.Find(FactWord.CheckedBy)?.Value is Checker checker && place.Doers.Contains(checker.Role.Value);

    /// <summary>Below this two steps have less in common than any two neighbours of the demo.</summary>
    private const double Unlike = 0.3;

    /// <summary><c>step 16 Tighten the ring</c></summary>
    public static string Where(StepInPlace place) => $"step {place.Step.Number} {place.Step.Name.Value}";

    /// <summary>A text that anybody may reword, unless a word in it tells left from right.</summary>
    public static Change Text(string where, string what, string old, string made)
    {
        var because = TellingWords.In(old, made);
        return new Change(because is null ? ChangeClass.Wording : ChangeClass.Hazard, where, what, old.Length == 0 ? null : old, made.Length == 0 ? null : made) { Because = because };
    }

    private static string Lines(ImmutableArray<ImmutableArray<Inline>> bullets) => string.Join(" · ", bullets.Select(b => b.Plain()));
}
