using Scriban.Runtime;
using Witnessmark.Comparing;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Comparisons;

/// <summary>A comparison as a page of its own, to print and to keep: one file that needs nothing else, without script.</summary>
public static class ComparisonPage
{
    /// <param name="old">The older state as it was named.</param>
    /// <param name="made">The newer one.</param>
    public static string Of(WorkshopComparison comparison, string old, string made, string programVersion)
    {
        var style = Resources.Text("site/pages.css") + Resources.Text("site/comparison.css");
        return Templates.Render("comparison.html", new ScriptObject
        {
            ["head"] = PrintHead.Of("en", $"{old} beside {made}", style),
            ["old"] = old,
            ["new"] = made,
            ["sum"] = comparison.Class == ChangeClass.None ? Verdict.Of(comparison) : $"{Verdict.Of(comparison)} {ComparisonText.Sum(comparison)}",
            ["version"] = programVersion,
            ["notice"] = Words.English.StandingNotice,
            ["content"] = Content(comparison),
        });
    }

    /// <summary>The tables alone, to stand in another page.</summary>
    internal static RawHtml Content(WorkshopComparison comparison) => new(string.Concat(
        comparison.Procedures.Select(Procedure).Concat(comparison.House.IsEmpty ? [] : [Table("shared by every procedure", "", comparison.House)])));

    internal static string Procedure(ProcedureComparison procedure) =>
        Table($"{procedure.Id} {ChangeWords.Versions(procedure)}", ChangeWords.Of(procedure.Class), procedure.Changes)
        + (procedure.SinceRelease is { } since ? Table($"{procedure.Id} beside {since.Old?.Version} as it was released", ChangeWords.Of(since.Class), ChangeWords.Further(procedure)) : "");

    /// <summary>The table of one procedure below a heading of another page.</summary>
    internal static RawHtml Below(string title, ProcedureComparison procedure) => new(Table(title, ChangeWords.Of(procedure.Class), procedure.Changes, "h3"));

    private static string Table(string title, string kind, IEnumerable<Change> changes, string heading = "h2") => Templates.Render("comparison-table.html", new ScriptObject
    {
        ["heading"] = heading,
        ["title"] = title,
        ["class"] = kind,
        ["layout"] = kind == "layout",
        ["changes"] = new ScriptArray(changes.Select(Row)),
    });

    private static ScriptObject Row(Change change) => new()
    {
        ["class"] = ChangeWords.Of(change.Class),
        ["where"] = change.Where,
        ["what"] = change.What,
        ["redline"] = Redline.Of(change.Old, change.New),
        ["mark"] = ChangeWords.Mark(change),
        ["because"] = change.Because ?? "",
        ["hazards"] = string.Join(", ", change.Hazards),
        ["worked"] = new ScriptArray(change.Worked.Select(w => new ScriptObject { ["what"] = w.What, ["redline"] = Redline.Of(w.Old, w.New) })),
    };
}
