using System.Collections.Immutable;
using System.Globalization;
using Scriban.Runtime;
using Witnessmark.Engineering.Printing;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Sheets;
using Witnessmark.Records.Tags;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Figures;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Tags;

/// <summary>The tags of one sheet on leaves to cut: one HTML file that needs nothing else, without script.</summary>
public static class TagPage
{
    private const string Letter = "T";

    /// <summary>The hash of this program's own templates and style of tags.</summary>
    public static string OwnTemplateHash => Resources.Hash(PrintHead.Template, "templates/tag", "templates/sheet-box", "templates/sheet-limits", "site/tags.css", Resources.Figures);

    /// <param name="identity">Of the copy that they go with; its template hash is <see cref="OwnTemplateHash"/>.</param>
    /// <exception cref="ArgumentException">There is no tag to print.</exception>
    public static string Render(TagPlan tags, SheetPlan sheet, SheetIdentity identity, Paper paper, Words words)
    {
        if (tags.IsEmpty)
            throw new ArgumentException($"{sheet.Procedure.Id.Value} needs no tags", nameof(tags));
        var context = new SheetContext(sheet, identity, words);
        var leaves = Leaves.Lay(TagCards.Of(tags, context));
        var title = $"{words.TagsFor} {PageRules.Identity(context)}";
        return Templates.Render("tags.html", new ScriptObject
        {
            ["print"] = PrintHead.Of(words.Language, title, $"{Resources.Text("site/tags.css")}@page{{size:{(paper == Paper.A4 ? "A4" : "letter")}}}"),
            ["title"] = title,
            ["leaves"] = new ScriptArray(leaves.Select((leaf, i) => Leaf(leaf, i + 1, leaves.Length, context))),
        });
    }

    private static ScriptObject Leaf(ImmutableArray<Cut> cuts, int number, int of, SheetContext context) => new()
    {
        ["head"] = string.Create(CultureInfo.InvariantCulture, $"{context.Words.TagsFor} {PageRules.Top(context)} · {context.Words.Leaf} {number} {context.Words.OutOf} {of}"),
        ["identity"] = PageRules.Identity(context) + PageRules.Printed(context),
        ["forms"] = PageRules.Forms(context),
        ["how"] = context.Words.CutTearPunch,
        ["code"] = new RawHtml(Code(context.Identity, number, of)),
        ["cuts"] = new ScriptArray(cuts.Select(c => Card(c, context))),
    };

    // a leaf is a page, so the page is known here
    private static string Code(SheetIdentity identity, int number, int of)
    {
        var says = FootCode.Text(identity.CodeText, Letter, number, of);
        return Qr.Draw($"code-{number}", says, Qr.Modules(says).Length * SheetMeasures.Module.Millimetres);
    }

    private static ScriptObject Card(Cut cut, SheetContext context)
    {
        cut.Model["size"] = string.Create(CultureInfo.InvariantCulture, $"{(cut.Wide ? "wide" : "narrow")} rows{cut.Rows}");
        var (words, id) = (context.Words, context.Identity);
        var copy = id.SetMark is { } mark ? $"{words.Copy} {mark}" : words.Specimen;
        cut.Model["foot"] = new ScriptObject
        {
            ["identity"] = $"{id.Procedure} {id.Version} · {ShortHash.Of(id.Hash)} · {copy}",
            ["wording"] = PageRules.Wording(context),
            ["on"] = $"{id.Procedure} {copy}",
            ["notice"] = words.StandingNotice,
        };
        return cut.Model;
    }
}
