using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Stack;

/// <summary>A part that is faced on one side stands in the order without saying which way it looks.</summary>
public sealed class StackFacingMissing : ISheetRule
{
    public static RuleInfo Info { get; } = new("stack-facing-missing", "Stack", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var ladder in Ladder.Of(machine))
            foreach (var rung in ladder.Rungs)
            {
                // faced on both sides or none: it cannot go in the wrong way round
                if (rung.Part?.FacedSide?.Value != "one")
                    continue;
                // the order says which way
                if (rung.Piece.FacedTo is not null)
                    continue;
                findings.Add(
                    Info,
                    rung.Piece.Part.At,
                    $"The {ladder.Stack.Id.Spoken()} does not say which way {rung.Name}, position {rung.Number}, is faced; it carries facing on one side only.",
                    "It fits both ways round. With the facing toward the disc it rubs where it should stand, loses the facing, and the piston travels too far.",
                    $"Write which end the faced side looks at: `{rung.Piece.Part.Value}, faced side to {EndNear(ladder, rung)}`.",
                    new FurtherPlace(rung.Part.FacedSide.Value.At, "faced on one side"));
            }
    }

    /// <summary>The end that the part is nearer to: facing looks away from the discs.</summary>
    private static string EndNear(Ladder ladder, Rung rung) =>
        rung.Number * 2 <= ladder.Rungs.Length ? ladder.FromName : ladder.ToName;
}
