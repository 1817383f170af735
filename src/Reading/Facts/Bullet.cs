using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.Facts;

/// <summary>A bullet as it was written, without its dash: a remark, or a key with a value.</summary>
public sealed record Bullet(Located<string> Text, Located<string>? Key, Located<string>? Value)
{
    /// <summary>Words that start a message where a mechanic expects one; a bullet is no place for it.</summary>
    private static readonly ImmutableArray<string> NoteWords =
        ["note", "notice", "caution", "warning", "danger", "attention", "important", "hint", "tip", "remark", "nb"];

    private static readonly ImmutableArray<string> Spellings = [.. FactWords.All.Select(r => r.Spelling)];

    public static Bullet Of(Located<string> text)
    {
        var trimmed = text.Trimmed();
        var written = trimmed.Value;
        var end = KeyEnd(written);
        var colon = Past(' ', written, end);
        if (end == 0 || colon == written.Length || written[colon] != ':')
            return new Bullet(trimmed, null, null);
        var key = trimmed.Piece(0, end);
        var value = trimmed.Piece(colon + 1, written.Length);
        // without a blank behind the colon it may be 16:9, a time or an address; only a word of the table is meant as a key
        var blank = value.Value.Length == 0 || char.IsWhiteSpace(value.Value[0]);
        return !blank && FactWords.Find(key.Value) is null ? new Bullet(trimmed, null, null) : new Bullet(trimmed, key, value.Trimmed());
    }

    public bool IsRemark => Key is null;

    public bool IsNote => Key is { } key && NoteWords.Contains(key.Value, StringComparer.OrdinalIgnoreCase);

    /// <summary>The word of the table, or null when the key is not in it.</summary>
    public FactRow? Row => Key is { } key ? FactWords.Find(key.Value) : null;

    /// <summary>The fact that was probably meant.</summary>
    public string? NearestFact => Key is { } key ? NearMiss.Of(key.Value.ToLowerInvariant(), Spellings) : null;

    /// <summary>Where the letters, hyphens and low lines end that the text begins with; 0 when it begins with no letter.</summary>
    private static int KeyEnd(string text)
    {
        var end = 0;
        while (end < text.Length && (char.IsLetter(text[end]) || (end > 0 && text[end] is '_' or '-')))
            end++;
        return end;
    }

    private static int Past(char blank, string text, int at)
    {
        while (at < text.Length && text[at] == blank)
            at++;
        return at;
    }
}
