using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Stack;

/// <summary>The two ends of a stack are different parts.</summary>
public sealed class StackEndsDiffer : ISheetRule
{
    public static RuleInfo Info { get; } = new("stack-ends-differ", "Stack", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var ladder in Ladder.Of(machine))
        {
            // one part alone has no second end
            if (ladder.Rungs.Length < 2)
                continue;
            var (first, last) = (ladder.Rungs[0], ladder.Rungs[^1]);
            // the same part at both ends: as it should be
            if (first.Piece.Part.Value == last.Piece.Part.Value)
                continue;
            // a disc at an end, or a part that nobody knows, is a fault of its own: the cause is told once
            if (!first.StandsStill || !last.StandsStill)
                continue;
            findings.Add(
                Info,
                last.Piece.Part.At,
                $"The {ladder.Stack.Id.Spoken()} begins at the {ladder.FromName} with {first.Name} and ends at the {ladder.ToName} with {last.Name}.",
                "An end part carries facing toward piston or ring and is thicker than a plate. With it at one end only, the other end runs metal on metal and the height is wrong.",
                $"Put the same part at both ends. The order has {Say.And([first.Piece.Part.Value, last.Piece.Part.Value])}; one of them is meant.",
                new FurtherPlace(first.Piece.Part.At, "the first end"));
        }
    }
}
