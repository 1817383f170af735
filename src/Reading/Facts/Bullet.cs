using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.Facts;

/// <summary>A bullet as it was written, without its dash: a remark, or a key with a value.</summary>
public readonly record struct Bullet
{
    /// <summary>Words that start a message where a mechanic expects one; a bullet is no place for it.</summary>
    private static readonly ImmutableArray<string> NoteWords =
        ["note", "notice", "caution", "warning", "danger", "attention", "important", "hint", "tip", "remark", "nb"];

    private static readonly ImmutableArray<string> Spellings = [.. FactWords.All.Select(r => r.Spelling)];

    private readonly Location? _key;
    private readonly Location? _value;

    private Bullet(Location at, FactRow? row, Location? key, Location? value)
    {
        At = at;
        Row = row;
        _key = key;
        _value = value;
    }

    public static Bullet Of(Location written)
    {
        var at = written.Trimmed();
        var signs = at.Signs;
        var end = KeyEnd(signs);
        var colon = end + Blanks(signs[end..]);
        if (end == 0 || colon == signs.Length || signs[colon] != ':')
            return new Bullet(at, null, null, null);
        var row = FactWords.Find(signs[..end]);
        // without a blank behind the colon it may be 16:9, a time or an address; only a word of the table is meant as a key
        var meant = row is not null || colon + 1 == signs.Length || char.IsWhiteSpace(signs[colon + 1]);
        return meant ? new Bullet(at, row, at.Part(0, end), at.Part(colon + 1, signs.Length).Trimmed()) : new Bullet(at, null, null, null);
    }

    public Location At { get; }

    /// <summary>The word of the table, or null when the key is not in it.</summary>
    public FactRow? Row { get; }

    public Located<string>? Key => _key is { } key ? new Located<string>(Row?.Spelling ?? key.Text, key) : null;

    public Located<string>? Value => _value is { } value ? new Located<string>(value.Text, value) : null;

    public bool IsRemark => _key is null;

    public bool IsNote => Row is null && Key is { } key && NoteWords.Contains(key.Value, StringComparer.OrdinalIgnoreCase);

    /// <summary>The fact that was probably meant.</summary>
    public string? NearestFact => Key is { } key ? NearMiss.Of(key.Value.ToLowerInvariant(), Spellings) : null;

    /// <summary>Where the letters, hyphens and low lines end that the text begins with; 0 when it begins with no letter.</summary>
    private static int KeyEnd(ReadOnlySpan<char> text)
    {
        var end = 0;
        while (end < text.Length && (char.IsLetter(text[end]) || (end > 0 && text[end] is '_' or '-')))
            end++;
        return end;
    }

    private static int Blanks(ReadOnlySpan<char> text) => text.Length - text.TrimStart(' ').Length;
}
