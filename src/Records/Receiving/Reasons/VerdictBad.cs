using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>The sheet says stop at this verdict, and the work went on.</summary>
public sealed class VerdictBad : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("verdict-bad");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<LookAsk>())
            Check(findings, answer.Entry, answer.Ask.Key, answer.Value, answer.Ask.Stops, answer.Ask.Reading.Outside?.Value ?? $"Put it right ({answer.Ask.Reading.LookFor?.Value}), then do again what was done after it.");
        foreach (var answer in held.Answers<ChoiceAsk>())
            Check(findings, answer.Entry, answer.Ask.Key, answer.Value, answer.Ask.Stops, "Find out why before anything else is done, then do again what was done after it.");
    }

    private static void Check(FindingList findings, HeldEntry entry, string key, DataNode value, ImmutableArray<string> stops, string putRight)
    {
        if (Typed.Text(value) is { } verdict && stops.Contains(verdict.Value))
            findings.Add(
                Info,
                verdict.At,
                Say.Capital($"{DeclaredName.Spoken(key)} is {verdict.Value}, and the work went on."),
                $"The sheet says stop here: {entry.Says}.",
                Say.Capital(putRight));
    }
}
