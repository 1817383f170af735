using Scriban.Runtime;
using Witnessmark.Engineering.Printing;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist.Asks;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Checklist;

/// <summary>The printable sheet: one HTML file that needs nothing else, without script.</summary>
public static class SheetPage
{
    /// <summary>The same plan, identity, paper and words give the same bytes.</summary>
    public static string Render(SheetPlan plan, SheetIdentity identity, Paper paper, Words words) =>
        Render(new SheetContext(plan, identity, words), paper, code: true);

    /// <param name="more">Style that comes last.</param>
    internal static string Render(SheetContext context, Paper paper, string more) => Render(context, paper, code: true, more);

    /// <summary>The same sheet without the code at its foot: on the press every page gets its own.</summary>
    public static PressSheet ForPress(SheetPlan plan, SheetIdentity identity, Paper paper, Words words)
    {
        var context = new SheetContext(plan, identity, words);
        return new PressSheet(Render(context, paper, code: false), PageRules.CodePlace(context, PrintKind.Sheet(words)));
    }

    private static string Render(SheetContext context, Paper paper, bool code, string more = "")
    {
        var (identity, words) = (context.Identity, context.Words);
        var style = SheetMeasures.Root + Resources.Text("site/sheet.css") + Resources.Text("site/signals.css") + PageRules.Of(context, paper, PrintKind.Sheet(words), code) + more;
        var head = SheetHead.Of(context);
        return Templates.Render("sheet.html", new ScriptObject
        {
            ["print"] = PrintHead.Of(words.Language, $"{PageRules.Identity(context)} · {head["title"]}", style),
            ["paper"] = paper == Paper.A4 ? "a4" : "letter",
            ["top"] = PageRules.Top(context),
            ["mark"] = identity.SetMark ?? words.Specimen,
            ["issued"] = identity.SetMark is null ? words.NotIssued : "",
            ["identity"] = PageRules.Identity(context),
            ["serial"] = identity.Serial is { } serial ? $"{words.Serial} {serial}" : "",
            ["printed"] = PageRules.Printed(context),
            ["foot"] = new ScriptArray(PageRules.Foot(context)),
            ["code"] = new RawHtml(PageRules.Code(context, PrintKind.Sheet(words))),
            ["no_foot"] = words.NoFoot,
            ["one_side"] = words.OneSide,
            ["head"] = head,
            ["sections"] = SheetSections.Of(context),
            ["closing"] = Closing(words),
        });
    }

    private static ScriptObject Closing(Words words) => new()
    {
        ["title"] = words.Closing,
        ["lines"] = new ScriptArray(new[] { words.Stops, words.Deviations, words.Owed }),
        ["none"] = words.NoneOrWhich,
        ["released"] = words.Released,
        ["by"] = Box.By(words),
        ["time"] = Box.Time(words),
        ["date"] = Box.Write("date", words.Date),
    };
}
