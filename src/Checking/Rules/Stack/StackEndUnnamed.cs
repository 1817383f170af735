using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Stack;

/// <summary>A stack holds parts that are faced on one side, and one of its ends has no name to face.</summary>
public sealed class StackEndUnnamed : ISheetRule
{
    public static RuleInfo Info { get; } = new("stack-end-unnamed", "Stack", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var ladder in Ladder.Of(machine))
        {
            // both ends have a name
            if (ladder.Stack is { From: not null, To: not null })
                continue;
            // nothing in it has a side to turn
            if (ladder.Rungs.FirstOrDefault(r => r.Part?.FacedSide?.Value == "one") is not { } faced)
                continue;
            var missing = ladder.Stack.From is null ? "from" : "to";
            findings.Add(
                Info,
                ladder.Stack.Id.At,
                $"The {ladder.Stack.Id.Spoken()} holds {faced.Name}, which is faced on one side, and `{missing}` is not written: one end has no name.",
                "Which way a faced side looks is said by the end that it looks at. Without both names nobody can prove that it looks outward.",
                $"Name the end: `{missing}: {(missing == "from" ? "piston" : "ring")}`.",
                new FurtherPlace(faced.Piece.Part.At, $"{faced.Name}, position {faced.Number}"));
        }
    }
}
