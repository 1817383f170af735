using Witnessmark.Language.Findings;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>The sheet says stop at this verdict, and the work went on.</summary>
public sealed class VerdictBad : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("verdict-bad");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<LookAsk>())
        {
            if (Typed.Text(answer.Value) is not { } verdict || !answer.Ask.Stops.Contains(verdict.Value))
                continue;
            findings.Add(
                Info,
                verdict.At,
                Say.Sentence($"{Say.Name(answer.Ask.Key)} is {verdict.Value}, and the work went on."),
                $"The sheet says stop here: {answer.Entry.Says}.",
                Say.Sentence(answer.Ask.Reading.Outside?.Value ?? $"Put it right ({answer.Ask.Reading.LookFor?.Value}), then do again what was done after it."));
        }
    }
}
