using System.Collections.Frozen;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Language.Model;

/// <summary>How names and texts of the data read on a sheet: as they are written, or as a translation gives them.</summary>
public sealed class Tongue
{
    public static readonly Tongue AsWritten = new(null, [], []);

    private readonly FrozenDictionary<string, string> _names;
    private readonly FrozenDictionary<string, string> _texts;

    /// <param name="language">Null: each thing in its own.</param>
    /// <param name="names">Where a name stands twice, the first counts.</param>
    /// <param name="texts">Originals and what stands for them.</param>
    public Tongue(string? language, IEnumerable<WordPair> names, IEnumerable<WordPair> texts)
    {
        Language = language;
        _names = First(names);
        _texts = First(texts);
    }

    public string? Language { get; }

    /// <summary>A declared name as it is spoken.</summary>
    public string Name(string declared) => _names.TryGetValue(declared, out var spoken) ? spoken : DeclaredName.Spoken(declared);

    /// <summary>A value, which may read otherwise of one thing than of another.</summary>
    public string Value(string value, string? of) =>
        _names.TryGetValue(ValueKey(value, of), out var spoken) || _names.TryGetValue(value, out spoken) ? spoken : DeclaredName.Spoken(value);

    /// <summary>A text of the data: what to look for, what to do when a value is outside.</summary>
    public string Text(string written) => _texts.TryGetValue(Folded(written), out var text) ? text : written;

    /// <summary>Whether the word is there, not only shown as it is written.</summary>
    public bool Knows(SheetWord word) => word.IsText
        ? _texts.ContainsKey(Folded(word.Written))
        : _names.ContainsKey(ValueKey(word.Written, word.Of)) || _names.ContainsKey(word.Written);

    /// <summary><c>bore-cover = placed</c>, spelled as in a condition.</summary>
    public static string ValueKey(string value, string? of) => of is null ? value : $"{of} = {value}";

    /// <summary>Where a text was broken into lines does not count.</summary>
    public static string Folded(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static FrozenDictionary<string, string> First(IEnumerable<WordPair> pairs) =>
        pairs.DistinctBy(p => Folded(p.From.Value), StringComparer.Ordinal).ToFrozenDictionary(p => Folded(p.From.Value), p => p.To.Value, StringComparer.Ordinal);
}

/// <summary>A word of the data that a sheet prints.</summary>
/// <param name="Written">The declared name, the value or the text.</param>
/// <param name="Of">Whose value it is, or null.</param>
/// <param name="At">Where it is used or declared, for messages.</param>
public sealed record SheetWord(string Written, string? Of, bool IsText, Location At)
{
    /// <summary>As its translation is written: <c>bore-cover = placed</c>.</summary>
    public string Key => Tongue.ValueKey(Written, Of);

    /// <summary>A tag or a number as it is stamped on the thing reads the same in every language; <c>10 of 12 snug</c> is none.</summary>
    public bool IsStamped => !IsText && !Written.Contains(' ', StringComparison.Ordinal) && Written.Any(c => char.IsUpper(c) || char.IsDigit(c));
}
