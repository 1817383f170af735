using System.Text.RegularExpressions;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.Facts;

/// <summary>Cuts a text into pieces that know where they stand.</summary>
internal static class TextPieces
{
    public static Located<string> Piece(this Located<string> text, int start, int end)
    {
        // a text of a data file with escapes or folded lines is not its place, character by character: then the place is all of it
        var at = text.At.Span.Length == text.Value.Length ? text.At.Part(start, end) : text.At;
        return new Located<string>(text.Value[start..end], at);
    }

    public static Located<string> Piece(this Located<string> text, Group group) => text.Piece(group.Index, group.Index + group.Length);

    public static Located<string>? PieceOrNull(this Located<string> text, Group group) => group.Success ? text.Piece(group) : null;

    public static Located<string> Trimmed(this Located<string> text)
    {
        var start = 0;
        var end = text.Value.Length;
        while (start < end && char.IsWhiteSpace(text.Value[start]))
            start++;
        while (end > start && char.IsWhiteSpace(text.Value[end - 1]))
            end--;
        return text.Piece(start, end);
    }

    /// <summary>The trimmed pieces between commas; an empty piece is one too.</summary>
    public static IEnumerable<Located<string>> AtCommas(this Located<string> text)
    {
        var start = 0;
        for (var i = 0; i <= text.Value.Length; i++)
            if (i == text.Value.Length || text.Value[i] == ',')
            {
                yield return text.Piece(start, i).Trimmed();
                start = i + 1;
            }
    }

    /// <summary>The trimmed pieces between matches of a separator.</summary>
    public static IEnumerable<Located<string>> Split(this Located<string> text, Regex separator)
    {
        var start = 0;
        foreach (var match in separator.Matches(text.Value).Cast<Match>())
        {
            yield return text.Piece(start, match.Index).Trimmed();
            start = match.Index + match.Length;
        }
        yield return text.Piece(start, text.Value.Length).Trimmed();
    }
}
