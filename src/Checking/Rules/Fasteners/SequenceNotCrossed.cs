using System.Collections.Immutable;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Fasteners;

/// <summary>A written order of tightening pulls one side of the joint before the other.</summary>
public sealed class SequenceNotCrossed : ISheetRule
{
    public static RuleInfo Info { get; } = new("sequence-not-crossed", "Fasteners", Severity.Query);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var written in WrittenSequence.Of(machine))
        {
            ImmutableArray<SequenceFault> wrong =
                [.. written.Problems.Where(p => p.Problem is SequenceProblem.NotOpposite or SequenceProblem.QuarterMissed or SequenceProblem.Neighbours)];
            // it goes across
            if (wrong.IsEmpty)
                continue;
            findings.Add(
                Info,
                written.At(wrong[0]),
                $"The order of tightening of {written.Group.Id.Value} does not go across the circle: {wrong[0].Says}{More(wrong)}.",
                "One side is pulled down first. The ring tilts, binds on its spigot, and the bolts pulled early go loose when the far side comes down.",
                $"{written.PutRight} If the bolts do not stand in a circle, the maker's order stays; say so under `basis`.");
        }
    }

    private static string More(ImmutableArray<SequenceFault> wrong) =>
        wrong.Length == 1 ? "" : $", and {Say.Count(wrong.Length - 1, "more place")} like it";
}
