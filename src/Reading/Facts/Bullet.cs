using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.Facts;

/// <summary>A bullet as it was written, without its dash: a remark, or a key with a value.</summary>
public sealed partial record Bullet(Located<string> Text, Located<string>? Key, Located<string>? Value)
{
    /// <summary>Words that start a message where a mechanic expects one; a bullet is no place for it.</summary>
    private static readonly ImmutableArray<string> NoteWords =
        ["note", "notice", "caution", "warning", "danger", "attention", "important", "hint", "tip", "remark", "nb"];

    private static readonly ImmutableArray<string> Spellings = [.. FactWords.All.Select(r => r.Spelling)];

    public static Bullet Of(Located<string> text)
    {
        var trimmed = text.Trimmed();
        var match = KeyAndValue.Match(trimmed.Value);
        if (!match.Success)
            return new Bullet(trimmed, null, null);
        var key = trimmed.Piece(match.Groups["key"]);
        // without a blank behind the colon it may be 16:9, a time or an address; only a word of the table is meant as a key
        if (!match.Groups["blank"].Success && FactWords.Find(key.Value) is null)
            return new Bullet(trimmed, null, null);
        return new Bullet(trimmed, key, trimmed.Piece(match.Groups["value"]));
    }

    public bool IsRemark => Key is null;

    public bool IsNote => Key is { } key && NoteWords.Contains(key.Value.ToLowerInvariant());

    /// <summary>The word of the table, or null when the key is not in it.</summary>
    public FactRow? Row => Key is { } key ? FactWords.Find(key.Value) : null;

    /// <summary>The fact that was probably meant.</summary>
    public string? NearestFact => Key is { } key ? NearMiss.Of(key.Value.ToLowerInvariant(), Spellings) : null;

    [GeneratedRegex(@"^(?<key>\p{L}[\p{L}_-]*) *:(?:(?<blank>\s)\s*|(?<blank>$))?(?<value>.*)$", RegexOptions.Singleline)]
    private static partial Regex KeyAndValue { get; }
}
