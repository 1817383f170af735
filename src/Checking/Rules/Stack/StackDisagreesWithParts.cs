using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Stack;

/// <summary>The order of a stack uses another number of a part than the sheet counts.</summary>
public sealed class StackDisagreesWithParts : ISheetRule
{
    public static RuleInfo Info { get; } = new("stack-disagrees-with-parts", "Stack", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var ladder in Ladder.Of(machine))
            foreach (var part in ladder.Parts)
            {
                var inOrder = ladder.CountOf(part);
                // no count to disagree with, or they agree
                if (part.Count is not { } count || count.Value == inOrder)
                    continue;
                var place = ladder.Rungs.First(r => r.Part == part).Piece.Part.At;
                findings.Add(new Finding(
                    Info,
                    count.At,
                    $"The sheet counts {count.Value} of {part.Id.Value}; the order of the {ladder.Stack.Id.Spoken()} takes {inOrder}.",
                    "Parts are laid out and counted by one number and stacked by the other: one is left over or missing, and nobody sees it once the ring is on.",
                    $"Find which is right and write it in both: `count: {inOrder}`, or an order that takes {count.Value}.")
                {
                    Further = [new FurtherPlace(place, $"the order takes {inOrder}")],
                    Worked = Worked(ladder),
                });
            }
    }

    /// <summary>A disc has a plate on each side, so there is one disc more than plates between the ends.</summary>
    private static ImmutableArray<string> Worked(Ladder ladder)
    {
        // without an end part at each end the count of faces is another
        if (ladder.Rungs is not [{ StandsStill: true }, .., { StandsStill: true }])
            return [];
        var discs = ladder.Rungs.Count(r => r.TurnsWithHub);
        var plates = ladder.Rungs.Count(r => r.StandsStill) - 2;
        return [$"between the ends: {plates} plates + 1 = {plates + 1} discs; the order has {discs}"];
    }
}
