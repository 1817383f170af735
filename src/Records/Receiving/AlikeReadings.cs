using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving;

/// <summary>Readings of one thing without any scatter in the last digit, and nobody has looked again.</summary>
internal sealed record AlikeReadings(Answer<ReadingAsk> Answer, int Count, decimal Number)
{
    /// <summary>Where the readings are written.</summary>
    public Location At => Answer.Value.At;

    public string Found => $"All {Count} readings of {DeclaredName.Spoken(Answer.Ask.Key)} are {Say.Number(Number)}.";

    public static IEnumerable<AlikeReadings> In(Held held)
    {
        foreach (var answer in held.Answers<ReadingAsk>())
        {
            var numbers = answer.Sound().SelectMany(r => r.Numbers).ToList();
            if (numbers.Count > 1 && numbers.TrueForAll(n => n == numbers[0]) && !LookedAgain(answer.Entry))
                yield return new AlikeReadings(answer, numbers.Count, numbers[0]);
        }
    }

    /// <summary>A second person has looked: not the one who did it.</summary>
    private static bool LookedAgain(HeldEntry entry) =>
        Typed.Text(entry.Entry.Find(EntryKeys.LookedAgain)) is { } second && second.Value != entry.By?.Value;
}
