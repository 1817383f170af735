using System.Collections.Frozen;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Wording;

/// <summary>Takes two steps for one when their names differ only in opposites, and in negations behind the first word.</summary>
internal sealed class FoldedName(Scope scope) : IEqualityComparer<Step>
{
    public bool Equals(Step? one, Step? other)
    {
        var left = Folded(one);
        var right = Folded(other);
        while (true)
        {
            var word = left.Next();
            if (!word.Equals(right.Next(), StringComparison.OrdinalIgnoreCase))
                return false;
            if (word.IsEmpty)
                return true;
        }
    }

    public int GetHashCode(Step step)
    {
        var hash = default(HashCode);
        var words = Folded(step);
        for (var word = words.Next(); !word.IsEmpty; word = words.Next())
            hash.Add(string.GetHashCode(word, StringComparison.OrdinalIgnoreCase));
        return hash.ToHashCode();
    }

    private FoldedWords Folded(Step? step) => new(step?.Name.Value ?? "", scope);
}

/// <summary>The words of a name, with one mark for both of two opposites and without its negations.</summary>
internal ref struct FoldedWords(string name, Scope scope)
{
    private readonly FrozenDictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> _opposites =
        scope.IsSpanish() ? Words.OppositesSpanish : Words.OppositesEnglish;

    private WordsInText _words = name.Words();
    private bool _isFirst = true;

    /// <summary>The next word or mark; nothing behind the last.</summary>
    public ReadOnlySpan<char> Next()
    {
        var word = _words.Next();
        while (!_isFirst && (word.IsWord("do") || Words.Forbidding.Has(word, scope)))
            word = _words.Next();
        _isFirst = false;
        return _opposites.TryGetValue(word, out var mark) ? mark : word;
    }
}
