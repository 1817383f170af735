using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Stack;

/// <summary>Two parts with their teeth on the same side lie on each other.</summary>
public sealed class StackTwoAlike : ISheetRule
{
    public static RuleInfo Info { get; } = new("stack-two-alike", "Stack", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var ladder in Ladder.Of(machine))
            foreach (var (lower, upper) in ladder.Rungs.Zip(ladder.Rungs.Skip(1)))
                CheckPair(ladder, lower, upper, findings);
    }

    private static void CheckPair(Ladder ladder, Rung lower, Rung upper, FindingList findings)
    {
        // whether they are alike is only known when both say where their teeth are
        if (lower.Part?.Spline is not { } spline || upper.Part?.Spline is not { } other)
            return;
        // inner on outer: as it should be
        if (spline.Value != other.Value)
            return;
        var between = ladder.Parts.Where(p => p.Spline is { } s && s.Value != spline.Value).Select(p => p.Id.Value);
        findings.Add(
            Info,
            upper.Piece.Part.At,
            $"Positions {lower.Number} and {upper.Number} of the {ladder.Stack.Id.Spoken()} are alike: {lower.Name} and {upper.Name} both have {spline.Value} teeth.",
            "Two parts with teeth on the same side turn together or stand together: nothing rubs between them, the brake loses two working faces, and the height is wrong.",
            between.Any()
                ? $"Put {Say.Or(between)} between them, or take one of the two out."
                : "Put a part with its teeth on the other side between them, or take one of the two out.",
            new FurtherPlace(lower.Piece.Part.At, $"{lower.Name}, position {lower.Number}"));
    }
}
