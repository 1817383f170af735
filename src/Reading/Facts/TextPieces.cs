using System.Collections.Immutable;
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
        return end - start == text.Value.Length ? text : text.Piece(start, end);
    }

    /// <summary>The trimmed pieces between commas; an empty piece is one too.</summary>
    public static ImmutableArray<Located<string>> AtCommas(this Located<string> text)
    {
        if (!text.Value.Contains(',', StringComparison.Ordinal))
            return [text.Trimmed()];
        var pieces = ImmutableArray.CreateBuilder<Located<string>>();
        var start = 0;
        for (var i = 0; i <= text.Value.Length; i++)
            if (i == text.Value.Length || text.Value[i] == ',')
            {
                pieces.Add(text.Piece(start, i).Trimmed());
                start = i + 1;
            }
        return pieces.DrainToImmutable();
    }

    /// <summary>The trimmed pieces between matches of a separator.</summary>
    public static ImmutableArray<Located<string>> Split(this Located<string> text, Regex separator)
    {
        var pieces = ImmutableArray.CreateBuilder<Located<string>>(1);
        var start = 0;
        foreach (var match in separator.EnumerateMatches(text.Value))
        {
            pieces.Add(text.Piece(start, match.Index).Trimmed());
            start = match.Index + match.Length;
        }
        pieces.Add(text.Piece(start, text.Value.Length).Trimmed());
        return pieces.DrainToImmutable();
    }
}
