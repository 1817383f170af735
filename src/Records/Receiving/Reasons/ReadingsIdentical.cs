using Witnessmark.Language.Findings;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>Real parts scatter in the last digit. Four or more readings without any scatter look copied.</summary>
public sealed class ReadingsIdentical : IReason
{
    private const int FewestToTell = 4;

    public static RuleInfo Info { get; } = ReasonInfo.Query("readings-identical");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<ReadingAsk>())
        {
            var numbers = answer.Sound().SelectMany(r => r.Numbers).ToList();
            if (numbers.Count < FewestToTell || numbers.Distinct().Count() > 1 || LookedAgain(answer.Entry))
                continue;
            findings.Add(
                Info,
                answer.Value.At,
                $"All {Say.Number(numbers.Count)} readings of {Say.Name(answer.Ask.Key)} are {Say.Number(numbers[0])}.",
                "Parts differ a little and so do hands. Readings without any difference are often one reading written many times.",
                "Measure some of them again, best the other person. If they really are alike, that person signs it in the entry: looked-again: TV.");
        }
    }

    /// <summary>A second person has looked: not the one who did it.</summary>
    private static bool LookedAgain(HeldEntry entry) =>
        Typed.Text(entry.Entry.Find(EntryKeys.LookedAgain)) is { } second && second.Value != entry.By?.Value;
}
