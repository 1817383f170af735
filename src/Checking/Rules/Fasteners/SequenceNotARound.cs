using System.Collections.Immutable;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Fasteners;

/// <summary>A written order of tightening does not name every bolt once.</summary>
public sealed class SequenceNotARound : ISheetRule
{
    public static RuleInfo Info { get; } = new("sequence-not-a-round", "Fasteners", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var written in WrittenSequence.Of(machine))
        {
            ImmutableArray<SequenceFault> wrong =
                [.. written.Problems.Where(p => p.Problem is SequenceProblem.NoSuchBolt or SequenceProblem.Twice or SequenceProblem.LeftOut)];
            // every bolt once
            if (wrong.IsEmpty)
                continue;
            findings.Add(
                Info,
                written.At(wrong[0]),
                $"The order of tightening of {written.Group.Id.Value} is no full round of {Say.Count(written.Bolts, "bolt")}: {Say.And(wrong.Select(p => p.Says))}.",
                "Bolts are tightened and inked by this list. One that is not on it stays finger-tight in every pass.",
                written.PutRight,
                new FurtherPlace(written.Group.Count!.Value.At, Say.Count(written.Bolts, "bolt")));
        }
    }
}
