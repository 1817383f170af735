using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>Digits that the gauge shows are not there: 86.2 where it reads 86.20.</summary>
public sealed class DigitsLeftOff : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Query("digits-left-off");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<ReadingAsk>())
        {
            if (answer.Ask.Reading.Resolution?.Value is not { } resolution)
                continue;
            foreach (var row in answer.Sound())
                if (row.In(row.Unit!).Where(v => ReadingImpossible.IsPlausible(answer.Ask, v) && v.Decimals < resolution.Decimals).Take(1).ToList() is [var value])
                    findings.Add(
                        Info,
                        row.At,
                        Say.Capital($"{answer.Name(row)}: {value} has {Say.Count(value.Decimals, "decimal")}; the gauge reads {resolution}."),
                        "A missing last digit may be a zero or may have been left off; near a limit it decides.",
                        $"Write all digits that the gauge showed: {value.RoundedTo(resolution.Decimals)} if the last ones were zero.");
        }
    }
}
