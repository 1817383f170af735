using Witnessmark.Language.Findings;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>Real parts scatter in the last digit. Four or more readings without any scatter may be copied.</summary>
public sealed class ReadingsIdentical : IReason
{
    /// <summary>If each reading may be one of three digits, four are alike by chance once in 27 times.</summary>
    private const int FewestToAsk = 4;

    public static RuleInfo Info { get; } = ReasonInfo.Query("readings-identical");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var alike in AlikeReadings.In(held).Where(a => a.Count is >= FewestToAsk and < ReadingsCopied.FewestToTell))
            findings.Add(
                Info,
                alike.At,
                alike.Found,
                "Parts differ a little and so do hands. Readings without any difference are often one reading written many times.",
                "Measure some of them again, best the other person. If they really are alike, that person signs it in the entry: looked-again: TV.");
    }
}
