using Witnessmark.Language.Findings;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>Who did it has checked it.</summary>
public sealed class SecondPersonIsFirst : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("second-person-is-first");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var entry in held.Entries.Where(Is))
        {
            var checker = entry.CheckedBy!.Value;
            findings.Add(
                Info,
                checker.At,
                $"{checker.Value} did {entry.Says} and checked it.",
                "Nobody sees his own slip a second time. The check is there because it cannot be seen once the work is closed.",
                "The other person looks for himself, as long as it can still be seen, and signs. If it cannot be seen any more, open it.",
                new FurtherPlace(entry.By!.Value.At, "who did it"));
        }
    }

    internal static bool Is(HeldEntry entry) =>
        entry.CheckedBy is { } checker && entry.By is { } by && Signatures.In(by).Any(b => b.Value == checker.Value);
}
