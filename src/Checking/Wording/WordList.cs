using System.Collections.Frozen;
using System.Text.RegularExpressions;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Wording;

/// <summary>A closed list of words, in the two languages that procedures are written in.</summary>
internal sealed class WordList(string english, string spanish)
{
    private readonly FrozenSet<string> _english = Split(english);
    private readonly FrozenSet<string> _spanish = Split(spanish);

    public bool Has(string word, Scope scope) => (scope.IsSpanish() ? _spanish : _english).Contains(word);

    private static FrozenSet<string> Split(string words) =>
        words.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).ToFrozenSet(StringComparer.Ordinal);
}

internal static partial class WordReading
{
    /// <summary>Whether the procedure is written in Spanish; everything else is read as English.</summary>
    public static bool IsSpanish(this Scope scope) =>
        (scope.Procedure.Language ?? scope.Library.Workshop.Language)?.Value.StartsWith("es", StringComparison.OrdinalIgnoreCase) ?? false;

    /// <summary>The words of a text in lower case, "don't" as one.</summary>
    public static string[] Words(this string text) => [.. Word().Matches(text.ToLowerInvariant().Replace('’', '\'')).Select(m => m.Value)];

    /// <summary>How many words people would count: "backing-ring" and "o'clock" are one.</summary>
    public static int WordCount(this string text) =>
        text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Count(w => w.Any(char.IsLetterOrDigit));

    [GeneratedRegex(@"[\p{L}\p{Nd}]+(?:'[\p{L}\p{Nd}]+)*")]
    private static partial Regex Word();
}
