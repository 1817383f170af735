using Witnessmark.Language.Text;

namespace Witnessmark.Reading.Data;

/// <summary>Where the characters of a value stand in its file.</summary>
public static class WrittenPlaces
{
    /// <summary>
    /// The text and where its characters stand: inside the quotes when it is quoted, so that a place in the text is a place in the
    /// file. Where they cannot agree (escapes, folded lines) it is the whole value.
    /// </summary>
    public static Located<string> Located(this DataText text)
    {
        var quoted = text.At.Span.Length == text.Text.Length + 2 && text.At.Text is ['"' or '\'', ..];
        return new Located<string>(text.Text, quoted ? text.At.Part(1, text.Text.Length + 1) : text.At);
    }

    /// <summary>Whether there is a finding already that says why this is no value: no plain text begins with these signs.</summary>
    internal static bool IsUnread(this DataNode node) => node is DataText && node.At.Text is ['*' or '{', ..];

    /// <summary>A part of a written text, or all of it where the file's characters are not those of the text.</summary>
    public static Location Part(this Located<string> text, TextSpan part) =>
        text.At.Span.Length == text.Value.Length ? text.At.Part(part.Start, part.End) : text.At;
}
