using System.Collections.Frozen;
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

internal static class WordReading
{
    /// <summary>Whether the procedure is written in Spanish; everything else is read as English.</summary>
    public static bool IsSpanish(this Scope scope) =>
        (scope.Procedure.Language ?? scope.Library.Workshop.Language)?.Value.StartsWith("es", StringComparison.OrdinalIgnoreCase) ?? false;

    /// <summary>The words of a text in lower case: letters, digits and the apostrophe of "don't".</summary>
    public static string[] Words(this string text) =>
    [
        .. text.ToLowerInvariant().Replace('’', '\'')
            .Split([.. text.ToLowerInvariant().Where(c => !char.IsLetterOrDigit(c) && c is not ('\'' or '’')).Distinct()])
            .Select(w => w.Trim('\''))
            .Where(w => w.Length > 0),
    ];
}
