namespace Witnessmark.Language.Text;

/// <summary>A text as it is written into a data file.</summary>
public static class YamlScalar
{
    private static readonly HashSet<string> Misread = ["no", "yes", "on", "off", "n", "y", "true", "false", "null"];

    /// <summary>Plain where YAML of any kind reads it as that text; quoted otherwise: <c>"0417"</c>, <c>"NO"</c>. Always one line.</summary>
    public static string Of(string text)
    {
        var line = text.ReplaceLineEndings(" ");
        return IsPlain(line) ? line : "\"" + line.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"";
    }

    private static bool IsPlain(string text) =>
        text.Length > 0 && char.IsAsciiLetter(text[0]) && text[^1] != ' ' && text.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or ' ') && !Misread.Contains(text.ToLowerInvariant());
}
