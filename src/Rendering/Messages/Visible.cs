namespace Witnessmark.Rendering.Messages;

/// <summary>Hostile text must not drive the terminal: control and direction characters are shown as \uFFFD.</summary>
public static class Visible
{
    public static string Text(string text) =>
        text.Any(Unsafe) ? string.Concat(text.Select(c => Unsafe(c) ? '\uFFFD' : c)) : text;

    /// <summary>The same, line ends kept.</summary>
    public static string Lines(string text) => string.Join('\n', text.Split('\n').Select(Text));

    private static bool Unsafe(char c) =>
        char.IsControl(c) || c is >= '\u202A' and <= '\u202E' or >= '\u2066' and <= '\u2069' or '\u200E' or '\u200F' or '\u061C';
}
