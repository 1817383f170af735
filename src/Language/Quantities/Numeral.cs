using System.Globalization;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Quantities;

/// <summary>A run of digits with its sign and separators, and what may be wrong with it.</summary>
/// <param name="Span">With the sign.</param>
/// <param name="Digits">Without the sign.</param>
internal readonly record struct Numeral(TextSpan Span, TextSpan Digits)
{
    public const int MostDigits = 18;

    private const string Minus = "-\u2212";
    private const string Dashes = "-\u2212\u2010\u2011\u2012\u2013\u2014";

    /// <summary>Blanks that do not break: they can only group digits. A plain blank could as well part two numbers.</summary>
    private const string Grouping = "\u00A0\u202F";

    private static readonly (string Written, string Ours)[] OtherWords =
    [
        ("less than", "below"), ("under", "below"), ("<=", "up to"), ("≤", "up to"), ("<", "below"), ("at most", "up to"), ("max", "up to"),
        ("more than", "above"), ("over", "above"), (">=", "from"), ("≥", "from"), (">", "above"), ("at least", "from"), ("min", "from"),
    ];

    public bool IsNegative => Digits.Start > Span.Start;

    public static Numeral At(string text, int start)
    {
        var first = start < text.Length && Minus.Contains(text[start]) ? start + 1 : start;
        var end = first;
        while (IsDigit(text, end) || (IsSeparator(text, end) && IsDigit(text, end + 1)))
            end++;
        return new Numeral(new TextSpan(start, end), new TextSpan(first, end));
    }

    public decimal Value(string text)
    {
        var written = text.AsSpan(Digits.Start, Digits.Length);
        var digits = HasGrouping(written) ? string.Concat(written.ToString().Where(c => !Grouping.Contains(c))) : written;
        var value = decimal.Parse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        return IsNegative && value != 0 ? -value : value;
    }

    public QuantityFault? Fault(string text, bool ranges)
    {
        var written = text.AsSpan(Digits.Start, Digits.Length);
        if (written.Length == 0)
            return NoNumber(text, ranges);
        if (written.Contains(','))
            return new QuantityFault(QuantityProblem.DecimalComma, Span, WithPoint(written.ToString()) is { } point ? Replaced(text, Digits, point) : null);
        if (IsTooLong(written))
            return new QuantityFault(QuantityProblem.TooLong, Digits, null);
        return written.Count('.') > 1 || !IsGrouped(written)
            ? new QuantityFault(QuantityProblem.SplitNumber, Span, null)
            : InPieces(text, written, ranges);
    }

    private static bool IsTooLong(ReadOnlySpan<char> written) =>
        written.Length > MostDigits
        && (written.ToString().Where(char.IsAsciiDigit).SkipWhile(c => c == '0').Count() > MostDigits
            || (written.Contains('.') && written.Length - written.LastIndexOf('.') - 1 > MostDigits));

    private QuantityFault NoNumber(string text, bool ranges)
    {
        var start = Span.Start;
        foreach (var (other, ours) in OtherWords)
            if (ranges && text.AsSpan(start).StartsWith(other, StringComparison.OrdinalIgnoreCase))
            {
                var at = TextSpan.Of(start, other.Length);
                var behind = PastBlanks(text, at.End);
                return new QuantityFault(QuantityProblem.NoNumber, at, Replaced(text, new TextSpan(start, behind), ours + " "));
            }
        var end = start;
        while (end < text.Length && !char.IsWhiteSpace(text[end]))
            end++;
        return new QuantityFault(QuantityProblem.NoNumber, new TextSpan(start, end), null);
    }

    /// <summary><c>4,60</c> is 4.60 and <c>1,234.5</c> is 1234.5; <c>1,200</c> can be either, so nothing is said.</summary>
    private static string? WithPoint(string written)
    {
        var parts = written.Split(',');
        var thousands = parts[0].Length is > 0 and <= 3 && parts[0][0] != '0' && parts.Skip(1).All(p => p.Split('.')[0].Length == 3);
        if (thousands && (parts.Length > 2 || written.Contains('.')))
            return string.Concat(parts);
        return thousands || parts.Length > 2 || written.Contains('.') ? null : $"{(parts[0].Length == 0 ? "0" : parts[0])}.{parts[1]}";
    }

    private static bool HasGrouping(ReadOnlySpan<char> written) => written.ContainsAny(Grouping);

    /// <summary>Groups of three in front of the point, or none at all.</summary>
    private static bool IsGrouped(ReadOnlySpan<char> written)
    {
        if (!HasGrouping(written))
            return true;
        var point = written.ToString().Split('.');
        var groups = point[0].Split([.. Grouping]);
        return groups[0].Length is > 0 and <= 3 && groups.Skip(1).All(g => g.Length == 3) && !point.Skip(1).Any(p => p.Any(Grouping.Contains));
    }

    /// <summary><c>12 405 h</c>, <c>1/2 in</c>, <c>2.8-3.6 mm</c>, <c>4e3 mm</c>: one number or two?</summary>
    private QuantityFault? InPieces(string text, ReadOnlySpan<char> written, bool ranges)
    {
        var gap = PastBlanks(text, Span.End);
        var between = gap == text.Length || (IsDigit(text, gap) && gap > Span.End) ? ' ' : text[gap];
        var second = At(text, between == ' ' ? gap : PastBlanks(text, gap + 1));
        if (between == ' ' && UnitWords.StartsAt(text, gap))
            return null;
        if (!(between is ' ' or '/' or 'e' or 'E' || Dashes.Contains(between)) || !IsDigit(text, second.Span.Start))
            return null;
        var digits = text[second.Digits.Start..second.Digits.End];
        var meant = between switch
        {
            ' ' => Joined(written.ToString(), digits),
            '/' => Divided(written.ToString(), digits),
            'e' or 'E' => null,
            _ => ranges ? $"{written} to {digits}" : null,
        };
        var whole = Span.Cover(second.Span);
        var mended = meant is null ? null : Replaced(text, new TextSpan(Digits.Start, whole.End), meant);
        return new QuantityFault(QuantityProblem.SplitNumber, whole, mended);
    }

    private static string? Joined(string first, string second) =>
        first.Length is > 0 and <= 3 && first.All(char.IsAsciiDigit) && second.Length == 3 && second.All(char.IsAsciiDigit) ? first + second : null;

    /// <summary>Fractions of an inch as a decimal, when it comes out even.</summary>
    private static string? Divided(string first, string second)
    {
        const int Longest = 4;
        if (first.Length > Longest || second.Length > Longest || !first.All(char.IsAsciiDigit) || !second.All(char.IsAsciiDigit))
            return null;
        var (over, under) = (int.Parse(first, CultureInfo.InvariantCulture), int.Parse(second, CultureInfo.InvariantCulture));
        return under is 2 or 4 or 8 or 16 or 32 or 64 ? ((decimal)over / under).ToString(CultureInfo.InvariantCulture) : null;
    }

    private static string Replaced(string text, TextSpan span, string by) => text[..span.Start] + by + text[span.End..];

    private static int PastBlanks(string text, int at)
    {
        while (at < text.Length && char.IsWhiteSpace(text[at]))
            at++;
        return at;
    }

    private static bool IsDigit(string text, int at) => at < text.Length && char.IsAsciiDigit(text[at]);

    private static bool IsSeparator(string text, int at) => at < text.Length && (text[at] is '.' or ',' || Grouping.Contains(text[at]));
}
