using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Stack;

/// <summary>A faced side looks at something that is no end of the stack.</summary>
public sealed class StackFacingUnknown : ISheetRule
{
    public static RuleInfo Info { get; } = new("stack-facing-unknown", "Stack", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var ladder in Ladder.Of(machine))
            foreach (var rung in ladder.Rungs)
            {
                // without names for both ends there is nothing to hold it against
                if (ladder.Stack.From is not { } from || ladder.Stack.To is not { } to)
                    break;
                // nothing written, or the name of an end
                if (rung.Piece.FacedTo is not { } faced || faced.Value == from.Value || faced.Value == to.Value)
                    continue;
                var meant = NearMiss.Of(faced.Value, [from.Value, to.Value]);
                findings.Add(
                    Info,
                    faced.At,
                    $"The faced side of {rung.Name} looks toward `{faced.Value}`; the ends of the {ladder.Stack.Id.Spoken()} are {from.Value} and {to.Value}.",
                    "On the sheet the one who stacks reads which way the facing goes. A word that names neither end leaves it to a guess.",
                    meant is null ? $"Write {from.Value} or {to.Value}." : $"Did you mean {meant}?",
                    new FurtherPlace(from.At, "the first end"),
                    new FurtherPlace(to.At, "the last end"));
            }
    }
}
