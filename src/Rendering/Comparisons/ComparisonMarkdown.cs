using System.Globalization;
using System.Text;
using Witnessmark.Comparing;

namespace Witnessmark.Rendering.Comparisons;

/// <summary>A comparison for a pull request: a table a procedure, what touches safety first. Text of the workshop cannot become markup.</summary>
public static class ComparisonMarkdown
{
    public static string Of(WorkshopComparison comparison)
    {
        var sum = comparison.Class == ChangeClass.None ? "" : $" {ComparisonText.Sum(comparison)}";
        var text = new StringBuilder($"**{Verdict.Of(comparison)}**{sum}\n");
        foreach (var procedure in comparison.Procedures)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n### {Plain(procedure.Id)} {Plain(ChangeWords.Versions(procedure))}: {ChangeWords.Of(procedure.Class)}\n\n");
            if (procedure.Changes.IsEmpty)
                text.Append("Only its layout differs: the hash is the same.\n");
            else
                Table(text, procedure.Changes);
            if (procedure.SinceRelease is { } since)
            {
                text.Append(CultureInfo.InvariantCulture, $"\nBeside {Plain(since.Old?.Version ?? "")} as it was released: **{ChangeWords.Of(since.Class)}**\n\n");
                Table(text, ChangeWords.Further(procedure));
            }
        }
        if (comparison.House.Length > 0)
        {
            text.Append("\n### shared by every procedure\n\n");
            Table(text, comparison.House);
        }
        return text.ToString();
    }

    private static void Table(StringBuilder text, IEnumerable<Change> changes)
    {
        text.Append("| class | where | what | was | is | |\n|---|---|---|---|---|---|\n");
        foreach (var change in changes)
        {
            var beside = new[] { ChangeWords.Mark(change), change.Because ?? "", string.Join(", ", change.Hazards) }.Where(t => t.Length > 0);
            text.Append(CultureInfo.InvariantCulture, $"| {Class(change.Class)} | {Plain(change.Where)} | {Plain(change.What)} | {Plain(change.Old ?? "—")} | {Plain(change.New ?? "—")} | {Plain(string.Join("; ", beside))} |\n");
            foreach (var (what, old, made) in change.Worked)
                text.Append(CultureInfo.InvariantCulture, $"| | | {Plain(what)} | {Plain(old ?? "—")} | {Plain(made ?? "—")} | |\n");
        }
    }

    private static string Class(ChangeClass kind) => kind == ChangeClass.Hazard ? "**hazard**" : ChangeWords.Of(kind);

    // entities where Markdown or HTML would see a sign of its own
    private static string Plain(string text)
    {
        var plain = new StringBuilder();
        foreach (var c in Messages.Visible.Text(text.ReplaceLineEndings(" ")))
            _ = c is '|' or '<' or '>' or '&' or '*' or '_' or '`' or '[' or ']' or '\\' or '#' or '!' or '~' or '@' ? plain.Append(CultureInfo.InvariantCulture, $"&#{(int)c};") : plain.Append(c);
        return plain.ToString();
    }
}
