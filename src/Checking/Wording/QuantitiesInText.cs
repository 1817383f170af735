using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

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

    private static readonly FrozenSet<string>.AlternateLookup<ReadOnlySpan<char>> UnitBeginnings = UnitTable.Spellings
        .Select(s => Beginning(s).ToString()).ToFrozenSet(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();

    private static readonly NumberFormatInfo WithComma = new() { NumberDecimalSeparator = "," };

    public static ImmutableArray<FoundQuantity> Find(ReadOnlySpan<char> text)
    {
        // most texts have none
        List<FoundQuantity>? found = null;
        TextSpan? before = null;
        var at = 0;
        while (NextNumber(text, at) is { } number)
        {
            if (UnitAt(text, number.End) is var (unit, end) && Value(text, number) is { } value)
            {
                found ??= [];
                if (before is { } low && Joins(text[low.End..number.Start]) && Value(text, low) is { } least)
                    found.Add(new FoundQuantity(new Quantity(least, unit), low.Start, end));
                found.Add(new FoundQuantity(new Quantity(value, unit), number.Start, end));
            }
            before = number;
            at = number.End;
        }
        return found is null ? [] : [.. found];
    }

    /// <summary>The next number that is no part of a word.</summary>
    private static TextSpan? NextNumber(ReadOnlySpan<char> text, int from)
    {
        while (text[from..].IndexOfAnyInRange('0', '9') is var ahead and >= 0)
        {
            var start = from + ahead;
            var end = start;
            while (end < text.Length && (char.IsAsciiDigit(text[end]) || IsPoint(text, end)))
                end++;
            if (start == 0 || !(char.IsLetterOrDigit(text[start - 1]) || text[start - 1] is '_'))
                return new TextSpan(start, end);
            from = end;
        }
        return null;
    }

    private static bool IsPoint(ReadOnlySpan<char> text, int at) =>
        text[at] is '.' or ',' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]);

    private static decimal? Value(ReadOnlySpan<char> text, TextSpan number)
    {
        var written = text[number.Start..number.End];
        var format = written.Contains(',') ? WithComma : NumberFormatInfo.InvariantInfo;
        return decimal.TryParse(written, NumberStyles.AllowDecimalPoint, format, out var value) && value < Most ? value : null;
    }

    private static (Unit Unit, int End)? UnitAt(ReadOnlySpan<char> text, int at)
    {
        var start = at;
        while (start < text.Length && text[start] is ' ' or '\u00A0' or '\u202F')
            start++;
        if (!MayBeUnit(text[start..]))
            return null;
        for (var length = Math.Min(LongestUnit, text.Length - start); length > 0; length--)
        {
            var end = start + length;
            if (end < text.Length && char.IsLetterOrDigit(text[end]) && char.IsLetterOrDigit(text[end - 1]))
                continue;
            if (UnitTable.Find(text.Slice(start, length)) is { } unit && !IsWord(text, start, end))
                return (unit, end);
        }
        return null;
    }

    /// <summary>Whether the first word is the first of a spelling. Signs outside ASCII may be others that look alike, so they may be any.</summary>
    private static bool MayBeUnit(ReadOnlySpan<char> text)
    {
        var beginning = Beginning(text.TrimStart());
        return !Ascii.IsValid(beginning) || UnitBeginnings.Contains(beginning);
    }

    /// <summary>The letters that a text begins with, or its first sign.</summary>
    private static ReadOnlySpan<char> Beginning(ReadOnlySpan<char> text)
    {
        var length = 0;
        while (length < text.Length && char.IsLetter(text[length]))
            length++;
        return text[..Math.Min(Math.Max(length, 1), text.Length)];
    }

    /// <summary>"in" and single letters are units only when the sentence does not run on with them as words.</summary>
    private static bool IsWord(ReadOnlySpan<char> text, int start, int end) =>
        text[start..end] is "in" or "C" or "F" or "'" or "\"" && end + 1 < text.Length && char.IsLetter(text[end + 1]);

    private static bool Joins(ReadOnlySpan<char> between) => between.Trim() is "to" or "±" or "–" or "-" or "to below" or "and" or "a" or "hasta";
}
