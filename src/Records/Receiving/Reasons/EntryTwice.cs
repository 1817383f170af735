using Witnessmark.Language.Findings;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>One step, two entries: nobody knows which holds.</summary>
public sealed class EntryTwice : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("entry-twice");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var same in held.SignOff.Entries.GroupBy(e => e.Step.Value, StringComparer.Ordinal).Where(g => g.Count() > 1))
        {
            var first = same.First();
            foreach (var again in same.Skip(1))
                findings.Add(
                    Info,
                    again.Step.At,
                    $"Step {again.Step.Value} has an entry twice.",
                    "Two answers to one question: nobody can say later which of them was true.",
                    "Keep the one that stands on the paper. A reading that was taken again stays on paper struck through once, and goes under deviations.",
                    new FurtherPlace(first.Step.At, "the first entry"));
        }
    }
}
