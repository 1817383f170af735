using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace Witnessmark.Checking.Wording;

/// <summary>
/// Every number that a reader meets in a text, as it must stand in each language: <c>235 N·m</c>, <c>12</c>, <c>M16x2</c>, and
/// ten for 10. "One" is left out: in most languages it is an article as well.
/// </summary>
internal static partial class NumbersInWords
{
    private static readonly FrozenDictionary<string, int> English = Numbered(
        "two both twice", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen", "twenty");

    private static readonly FrozenDictionary<string, int> Spanish = Numbered(
        "dos ambos ambas", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve", "diez", "once", "doce", "trece", "catorce", "quince", "dieciséis", "diecisiete", "dieciocho", "diecinueve", "veinte");

    public static IEnumerable<string> Of(string text, bool spanish)
    {
        var quantities = QuantitiesInText.Find(text);
        foreach (var quantity in quantities)
            yield return quantity.Quantity.ToString();
        foreach (var (start, word) in Word.Matches(text).Select(m => (m.Index, m.Value)))
            if (quantities.Any(q => start < q.End && q.Start < start + word.Length))
                continue;
            else if (word.Any(char.IsAsciiDigit))
                yield return word;
            else if ((spanish ? Spanish : English).TryGetValue(word.ToLowerInvariant(), out var number))
                yield return $"{number}";
    }

    /// <summary>Words from two upwards, several for one number with a blank between.</summary>
    private static FrozenDictionary<string, int> Numbered(params string[] words) => words
        .SelectMany((all, i) => all.Split(' ').Select(word => (word, number: i + 2)))
        .ToFrozenDictionary(w => w.word, w => w.number, StringComparer.Ordinal);

    [GeneratedRegex(@"[\p{L}\p{Nd}]+(?:[.,/\-'’][\p{L}\p{Nd}]+)*")]
    private static partial Regex Word { get; }
}
