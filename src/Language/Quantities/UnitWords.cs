using System.Collections.Immutable;

namespace Witnessmark.Language.Quantities;

/// <summary>Where the spelling of a unit can end: units have blanks, dots and dashes of their own.</summary>
internal static class UnitWords
{
    public static ImmutableArray<string> PlusMinus { get; } = ["±", "+-", "+/-", "+−"];

    /// <summary>The end, a parenthesis, a tolerance or a word of a range.</summary>
    public static bool StopsAt(string text, int at) =>
        at >= text.Length || text[at] is '(' or ')' || IsPlusMinus(text, at) || IsWordAt(text, at, "to") || IsWordAt(text, at, "or");

    private static bool IsPlusMinus(string text, int at)
    {
        foreach (var sign in PlusMinus)
            if (Is(text, at, sign))
                return true;
        return false;
    }

    /// <summary>The end of the first word; null behind the last.</summary>
    public static int? FirstEnd(string text, int start)
    {
        for (var i = start + 1; i <= text.Length; i++)
            if (IsEnd(text, i) && !char.IsWhiteSpace(text[i - 1]))
                return i;
        return null;
    }

    /// <summary>The end with one word more; null before what stops a unit.</summary>
    public static int? NextEnd(string text, int end) => StopsAt(text, PastBlanks(text, end)) ? null : FirstEnd(text, end);

    /// <summary>Whether the word here is a unit by itself, as is <c>1/min</c>.</summary>
    public static bool StartsAt(string text, int at) => FirstEnd(text, at) is { } end && UnitTable.Find(text.AsSpan(at..end)) is not null;

    public static int PhraseEnd(string text, int start)
    {
        var last = start;
        for (var end = FirstEnd(text, start); end is not null; end = NextEnd(text, last))
            last = end.Value;
        return last;
    }

    private static bool IsEnd(string text, int at) =>
        at == text.Length || text[at] is '(' or ')' or ',' or ';' or '±' or '+' || char.IsWhiteSpace(text[at]);

    private static int PastBlanks(string text, int at)
    {
        while (at < text.Length && char.IsWhiteSpace(text[at]))
            at++;
        return at;
    }

    private static bool Is(string text, int at, string what) => text.AsSpan(at).StartsWith(what, StringComparison.Ordinal);

    private static bool IsWordAt(string text, int at, string word) =>
        Is(text, at, word) && (at + word.Length == text.Length || char.IsWhiteSpace(text[at + word.Length]));
}
