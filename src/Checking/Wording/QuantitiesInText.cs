using System.Globalization;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Checking.Wording;

/// <summary>A number with its unit, found in running text.</summary>
internal readonly record struct FoundQuantity(Quantity Quantity, int Start, int End);

/// <summary>
/// Finds <c>235 N·m</c> in a sentence. Of <c>2.8 to 3.6 mm</c> and <c>235 ± 12 N·m</c> it finds both numbers. A word that is
/// also a unit counts only where no further word follows: "12 in" is a length, "12 in the bore" is not.
/// </summary>
internal static class QuantitiesInText
{
    /// <summary>Larger than any number on a machine; beyond it units could not be turned into each other.</summary>
    private const decimal Most = 1_000_000_000_000m;

    private static readonly int LongestUnit = UnitTable.Spellings.Max(s => s.Length);

    public static IEnumerable<FoundQuantity> Find(string text) => text.AsSpan().ContainsAnyInRange('0', '9') ? WithUnits(text) : [];

    private static IEnumerable<FoundQuantity> WithUnits(string text)
    {
        FoundNumber? before = null;
        foreach (var number in Numbers(text))
        {
            if (UnitAt(text, number.End) is var (unit, end))
            {
                if (before is { } low && Joins(text[low.End..number.Start]))
                    yield return new FoundQuantity(new Quantity(low.Value, unit), low.Start, end);
                yield return new FoundQuantity(new Quantity(number.Value, unit), number.Start, end);
            }
            before = number;
        }
    }

    private readonly record struct FoundNumber(decimal Value, int Start, int End);

    private static IEnumerable<FoundNumber> Numbers(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (!char.IsAsciiDigit(text[i]))
                continue;
            var end = i;
            while (end < text.Length && (char.IsAsciiDigit(text[end]) || IsPoint(text, end)))
                end++;
            var alone = i == 0 || !(char.IsLetterOrDigit(text[i - 1]) || text[i - 1] is '_');
            if (alone && Value(text[i..end]) is { } value)
                yield return new FoundNumber(value, i, end);
            i = end;
        }
    }

    private static bool IsPoint(string text, int at) => text[at] is '.' or ',' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]);

    private static decimal? Value(string written) =>
        decimal.TryParse(written.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && value < Most
            ? value
            : null;

    private static (Unit Unit, int End)? UnitAt(string text, int at)
    {
        var start = at;
        while (start < text.Length && text[start] is ' ' or '\u00A0' or '\u202F')
            start++;
        for (var length = Math.Min(LongestUnit, text.Length - start); length > 0; length--)
        {
            var end = start + length;
            if (end < text.Length && char.IsLetterOrDigit(text[end]) && char.IsLetterOrDigit(text[end - 1]))
                continue;
            if (UnitTable.Find(text.AsSpan(start, length)) is { } unit && !IsWord(text, start, end))
                return (unit, end);
        }
        return null;
    }

    /// <summary>"in" and single letters are units only when the sentence does not run on with them as words.</summary>
    private static bool IsWord(string text, int start, int end) =>
        text[start..end] is "in" or "C" or "F" or "'" or "\"" && end + 1 < text.Length && char.IsLetter(text[end + 1]);

    private static bool Joins(string between) => between.Trim() is "to" or "±" or "–" or "-" or "to below" or "and" or "a" or "hasta";
}
