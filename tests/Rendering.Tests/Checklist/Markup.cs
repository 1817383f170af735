using System.Text.RegularExpressions;

namespace Witnessmark.Rendering.Tests.Checklist;

/// <summary>A page as a person would compare it: tags and words, one block a line, drawings by their titles.</summary>
internal static partial class Markup
{
    public static string Body(string html)
    {
        var main = Between(html, "<main>", "</main>");
        main = Drawing().Replace(main, m => Title().Match(m.Value) is { Success: true } t ? $"[drawing: {t.Groups[1].Value}]" : "[sign]");
        main = Blank().Replace(main, " ");
        return BlockStart().Replace(main, "\n$0").Trim();
    }

    public static string Between(string text, string start, string end)
    {
        var from = text.IndexOf(start, StringComparison.Ordinal) + start.Length;
        return text[from..text.IndexOf(end, from, StringComparison.Ordinal)];
    }

    public static int Count(string text, string part) => text.Split(part).Length - 1;

    [GeneratedRegex("<svg.*?</svg>", RegexOptions.Singleline)]
    private static partial Regex Drawing();

    [GeneratedRegex("<title[^>]*>(.*?)</title>")]
    private static partial Regex Title();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blank();

    [GeneratedRegex(@" ?</?(section|article|div|h1|h2|h3|p|ul|ol|li|dl|table|tr)[ >]")]
    private static partial Regex BlockStart();
}
