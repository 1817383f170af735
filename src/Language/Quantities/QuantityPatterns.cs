using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;

namespace Witnessmark.Language.Quantities;

/// <summary>
/// Written quantities as regular expressions, from the unit table: for those who cannot ask <see cref="QuantityReader"/>, such as
/// an editor. A pattern takes whatever the reader takes. It cannot compare two numbers, and of a range in two units of one kind
/// it sees nothing wrong.
/// </summary>
public static class QuantityPatterns
{
    /// <summary>Signs of a written quantity; what is longer is not read.</summary>
    public const int LongestText = QuantityScanner.LongestText;

    private const string Minus = "[-\u2212]";
    private const string Digits = @"[0-9.\u00A0\u202F]*";
    private const string Whole = @"(?:[0-9]{1,3}(?:[\u00A0\u202F][0-9]{3})+|0*[0-9]{1,18})";
    private const string Unsigned = $@"(?:{Whole}(?:\.[0-9]{{1,18}})?|\.[0-9]{{1,18}})(?![.,\u00A0\u202F]?[0-9])";
    private const string Number = $"{Minus}?{Unsigned}";

    private static readonly string PlusMinus = $"(?:{string.Join('|', UnitWords.PlusMinus.Select(Regex.Escape))})";

    private static readonly string PercentUnit = Unit("share");

    /// <summary>All kinds of the unit table, in its order.</summary>
    public static ImmutableArray<string> Kinds { get; } = [.. UnitTable.All.Select(u => u.Kind).Distinct(StringComparer.Ordinal)];

    /// <summary><c>75 %</c></summary>
    public static string Share { get; } = $@"^\s*{Number}\s*{PercentUnit}\s*$";

    /// <param name="kind">Of the unit table.</param>
    /// <param name="least">What the number may be.</param>
    public static string Quantity(string kind, LeastSize least = LeastSize.Anything) => $@"^\s*{Sized(least)}\s*{Unit(kind)}\s*$";

    public static string Toleranced(string kind, LeastSize least = LeastSize.Anything)
    {
        var unit = Unit(kind);
        var off = $@"\s*{PlusMinus}\s*{Unsigned}\s*";
        var beside = $@"(?:\s*\(\s*{Number}\s*{unit}\s*\))?";
        return $@"^\s*{Sized(least)}(?:\s*{unit}(?:{off}(?:{unit}|{PercentUnit}))?|{off}{unit}){beside}\s*$";
    }

    public static string Range(string kind)
    {
        var size = $@"{Number}\s*{Unit(kind)}";
        return $@"^\s*(?:{Word("below")}\s+{size}|{Word("up to")}\s+{size}|{Word("above")}\s+{size}|{Word("from")}\s+{size}|{size}\s+{Word("or")} (?:{Word("less")}|{Word("more")})|{TwoEnds(kind)})\s*$";
    }

    /// <summary>A range that has both ends.</summary>
    public static string RangeOfTwoEnds(string kind) => $@"^\s*{TwoEnds(kind)}\s*$";

    private static string TwoEnds(string kind)
    {
        var unit = Unit(kind);
        return $@"(?:(?:(?:{Word("above")}|{Word("from")})\s+)?{Number}\s*(?:{unit}\s+)?{Word("to")}\s+(?:{Word("below")}\s+)?)?{Number}\s*{unit}";
    }

    private static string Sized(LeastSize least) => least switch
    {
        LeastSize.AboveZero => $"(?={Digits}[1-9]){Unsigned}",
        LeastSize.Zero => $"(?:{Minus}(?!{Digits}[1-9]))?{Unsigned}",
        _ => Number,
    };

    /// <summary>Every spelling of every unit of a kind, the longest first.</summary>
    private static string Unit(string kind)
    {
        var spellings = UnitTable.All.Where(u => u.Kind == kind).SelectMany(u => u.Spellings.Prepend(u.Symbol));
        return $"(?:{string.Join('|', spellings.Distinct(StringComparer.Ordinal).OrderByDescending(s => s.Length).ThenBy(s => s, StringComparer.Ordinal).Select(Spelled))})";
    }

    /// <summary>With the signs that look alike.</summary>
    private static string Spelled(string spelling)
    {
        var pattern = new StringBuilder();
        foreach (var sign in spelling)
            pattern.Append(UnitTable.LookAlikes(sign) is { Length: > 0 } alike ? $"[{sign}{alike}]".Replace("[-", @"[\-", StringComparison.Ordinal)
                : sign == ' ' ? @"\s+"
                : @"\^$.|?*+()[]{}/".Contains(sign, StringComparison.Ordinal) ? $@"\{sign}"
                : $"{sign}");
        return pattern.ToString();
    }

    /// <summary>A word in capitals or not.</summary>
    private static string Word(string word) => string.Concat(word.Select(c => c == ' ' ? " " : $"[{c}{char.ToUpperInvariant(c)}]"));
}

/// <summary>What the number of a size may be.</summary>
public enum LeastSize
{
    Anything,
    Zero,
    AboveZero,
}
