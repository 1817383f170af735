using System.Collections.Frozen;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Wording;

/// <summary>A closed list of words, in the two languages that procedures are written in. Capitals make no other word.</summary>
internal sealed class WordList(string english, string spanish)
{
    private readonly WordsOfOneLanguage _english = new(english);
    private readonly WordsOfOneLanguage _spanish = new(spanish);

    public bool Has(ReadOnlySpan<char> word, Scope scope) => In(scope).Has(word);

    /// <summary>Whether a word begins like one of the list: <c>crushes</c> like <c>crush</c>.</summary>
    public bool HasBeginningOf(ReadOnlySpan<char> word, Scope scope) => In(scope).HasBeginningOf(word);

    private WordsOfOneLanguage In(Scope scope) => scope.IsSpanish() ? _spanish : _english;
}

internal sealed class WordsOfOneLanguage
{
    private readonly FrozenSet<string>.AlternateLookup<ReadOnlySpan<char>> _words;
    private readonly int _longest;

    public WordsOfOneLanguage(string words)
    {
        var all = words.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        _words = all.ToFrozenSet(StringComparer.OrdinalIgnoreCase).GetAlternateLookup<ReadOnlySpan<char>>();
        _longest = all.Max(w => w.Length);
    }

    public bool Has(ReadOnlySpan<char> word) => _words.Contains(word);

    public bool HasBeginningOf(ReadOnlySpan<char> word)
    {
        for (var length = Math.Min(word.Length, _longest); length > 0; length--)
            if (_words.Contains(word[..length]))
                return true;
        return false;
    }
}
