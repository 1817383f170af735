using System.Collections.Immutable;
using Witnessmark.Comparing;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Changes;

/// <summary>A message, hold point, stop or second person is gone or weaker, and the author does not say that he meant it.</summary>
public sealed class RemovalUnsaid : IChangeRule
{
    private static readonly ImmutableHashSet<string> Guarding =
    [
        "message", "signal word", "holds for", "avoided by", "hold", "checked-by", "by", "stop-if", "requires", "step", "only-if", "starts-with", "zone", "call", "answer",
        "count", "recover", "measure", "inspect", "test", "work-out", "decide", "until", "owes", "blocks", "controls", "met-by", "severity", "if-ignored",
    ];

    public static RuleInfo Info { get; } = new("removal-unsaid", "Changes", Severity.Fault);

    public static void Check(ChangedProcedure changed, FindingList findings)
    {
        // what nobody has worked from may change as it likes
        if (changed.Old.Procedure.Status?.Value != ReleaseStatus.Released)
            return;
        foreach (var change in changed.Compared.Changes)
        {
            // not a guard, or not weaker
            if (change.Class != ChangeClass.Hazard || change.Sense != Sense.Looser || !Guarding.Contains(change.What) && !Guarding.Contains(change.What.Split(' ')[0]))
                continue;
            // said, with a reason
            if (changed.Procedure.Drops.Any(d => change.Where.Contains(d.What.Value, StringComparison.OrdinalIgnoreCase)))
                continue;
            findings.Add(
                Info,
                change.NewAt ?? changed.Procedure.Version?.At ?? changed.Procedure.Id.At,
                change.Old is null ? $"{changed.Procedure.Id} does less than it did: `{change.What}: {change.New}` has come to {change.Where}." : $"{changed.Procedure.Id} no longer has {Said(change)}.",
                "Somebody was hurt, or nearly, before that line was written. When it goes unsaid, nobody asks whether the danger has gone too.",
                $"Put it back, or say that it is meant: `drops: [{{what: {Named(change)}, reason: …}}]` in the front matter.",
                [.. change.OldAt is { } at ? new[] { new FurtherPlace(at, "as it was") } : []]);
        }
    }

    private static string Said(Change change) => change.What == "message" || change.What == "step"
        ? $"the {change.What} `{change.Old?.TrimEnd('.')}`"
        : $"`{change.What}: {change.Old?.TrimEnd('.')}` at {change.Where}{(change.New is { } weaker ? $"; it is `{weaker.TrimEnd('.')}` now" : "")}";

    // "step 10 Count what is left over" and "WARNING: fingers can be crushed" are called by their names
    private static string Named(Change change) => change.Where.StartsWith("step ", StringComparison.Ordinal)
        ? string.Join(' ', change.Where.Split(' ').Skip(2))
        : change.Where[(change.Where.IndexOf(": ", StringComparison.Ordinal) is var colon and >= 0 ? colon + 2 : 0)..];
}
