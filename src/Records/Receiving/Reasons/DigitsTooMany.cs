using Witnessmark.Language.Findings;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>A digit that the gauge cannot show.</summary>
public sealed class DigitsTooMany : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("digits-too-many");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<ReadingAsk>())
        {
            if (answer.Ask.Reading.Resolution?.Value is not { } resolution)
                continue;
            foreach (var row in answer.Sound())
                if (row.In(row.Unit!).Where(v => ReadingImpossible.IsPlausible(answer.Ask, v) && !CanShow(v.Number, resolution)).Take(1).ToList() is [var value])
                    findings.Add(
                        Info,
                        row.At,
                        Say.Capital($"{answer.Name(row)}: {value} is finer than the gauge, which reads {resolution}."),
                        "A digit that no gauge has shown was reckoned or guessed, and makes the reading look better than it is.",
                        "Write what the gauge showed. If it was another gauge, write which one under tool and say so under deviations.");
        }
    }

    private static bool CanShow(decimal number, Quantity resolution) => resolution.Number == 0 || number % resolution.Number == 0;
}
