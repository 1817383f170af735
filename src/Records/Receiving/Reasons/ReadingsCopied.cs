using Witnessmark.Language.Findings;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>So many readings alike to the last digit are one reading, written many times.</summary>
public sealed class ReadingsCopied : IReason
{
    /// <summary>If each reading may be one of three digits, eight are alike by chance once in 2,187 times.</summary>
    internal const int FewestToTell = 8;

    public static RuleInfo Info { get; } = ReasonInfo.Fault("readings-copied");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var alike in AlikeReadings.In(held).Where(a => a.Count >= FewestToTell))
            findings.Add(
                Info,
                alike.At,
                alike.Found,
                "Parts differ a little and so do hands: that many readings are not alike by chance once in two thousand times. A copied reading is no measurement.",
                "Measure again. If they really are alike, a second person measures some of them too and signs it in the entry: looked-again: TV.");
    }
}
