using Witnessmark.Language.Text;

namespace Witnessmark.Reading.Data;

public static class Written
{
    /// <summary>
    /// The text and where its characters stand: inside the quotes when it is quoted, so that a place in the text is a place in the
    /// file. Where they cannot agree (escapes, folded lines) it is the whole value.
    /// </summary>
    public static Located<string> Located(this DataText text) => new(text.Text, text.InnerAt());

    private static Location InnerAt(this DataText text)
    {
        var quoted = text.At.Span.Length == text.Text.Length + 2 && text.At.Text is ['"' or '\'', ..];
        return quoted ? text.At.Part(1, text.Text.Length + 1) : text.At;
    }

    /// <summary>A part of a written text, or all of it where the file's characters are not those of the text.</summary>
    public static Location Part(this Located<string> text, TextSpan part) =>
        text.At.Span.Length == text.Value.Length ? text.At.Part(part.Start, part.End) : text.At;

    /// <summary>A piece of a written text with its place.</summary>
    public static Located<string> Piece(this Located<string> text, int start, int end) =>
        new(text.Value[start..end], text.Part(new TextSpan(start, end)));

    /// <summary>Without blanks at both ends.</summary>
    public static Located<string> Trimmed(this Located<string> text)
    {
        var end = text.Value.TrimEnd().Length;
        var start = Math.Min(end, text.Value.Length - text.Value.TrimStart().Length);
        return text.Piece(start, end);
    }

    /// <summary>The pieces between separators, trimmed; empty ones too.</summary>
    public static IEnumerable<Located<string>> SplitAt(this Located<string> text, string separator)
    {
        var start = 0;
        for (int at; (at = text.Value.IndexOf(separator, start, StringComparison.Ordinal)) >= 0; start = at + separator.Length)
            yield return text.Piece(start, at).Trimmed();
        yield return text.Piece(start, text.Value.Length).Trimmed();
    }
}
