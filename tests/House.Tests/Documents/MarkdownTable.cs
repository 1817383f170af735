namespace Witnessmark.House.Tests.Documents;

/// <summary>A table as it stands in a Markdown file.</summary>
internal static class MarkdownTable
{
    public static IEnumerable<string> Of(string[] head, IEnumerable<string[]> rows) =>
        rows.Prepend([.. head.Select(_ => "---")]).Prepend(head).Select(Line);

    public static string Typed(string text) => $"`{text}`";

    /// <summary>A bar in a cell would begin the next one.</summary>
    private static string Line(string[] cells) => $"| {string.Join(" | ", cells.Select(c => c.Replace("|", "\\|", StringComparison.Ordinal)))} |";
}
