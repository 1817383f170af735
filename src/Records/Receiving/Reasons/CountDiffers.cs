using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>A count that is not what the sheet expects.</summary>
public sealed class CountDiffers : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("count-differs");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<CountAsk>())
        {
            var ask = answer.Ask;
            if (Typed.Count(answer.Value) is not { } counted || (ask.AtLeast ? counted >= ask.Expected : counted == ask.Expected))
                continue;
            findings.Add(
                Info,
                answer.Value.At,
                Say.Capital($"{DeclaredName.Spoken(ask.Key)}: {counted} counted in {answer.Entry.Says}; it must be {(ask.AtLeast ? "at least " : "")}{ask.Expected}."),
                "A piece too few is missing where it belongs or lies where it does not; a piece too many was left out of something.",
                "Stop and find it. Count again together before anything is closed or turned.");
        }
    }
}
