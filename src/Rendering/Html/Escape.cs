using System.Text;

namespace Witnessmark.Rendering.Html;

/// <summary>Text made harmless in HTML and SVG, between tags and inside quoted attributes alike.</summary>
public static class Escape
{
    private const string Dangerous = "&<>\"'";

    public static string Text(string text)
    {
        if (text.AsSpan().IndexOfAny(Dangerous) < 0 && !text.Any(IsUnprintable))
            return text;
        var safe = new StringBuilder(text.Length + 16);
        foreach (var c in text)
            safe.Append(Of(c) ?? (IsUnprintable(c) ? "\uFFFD" : null) ?? c.ToString());
        return safe.ToString();
    }

    private static string? Of(char c) => c switch
    {
        '&' => "&amp;",
        '<' => "&lt;",
        '>' => "&gt;",
        '"' => "&quot;",
        '\'' => "&#39;",
        _ => null,
    };

    // no place in a document, and direction overrides make a number read backward
    private static bool IsUnprintable(char c) =>
        (char.IsControl(c) && c is not ('\n' or '\t')) || c is >= '\u202A' and <= '\u202E' or >= '\u2066' and <= '\u2069';
}
