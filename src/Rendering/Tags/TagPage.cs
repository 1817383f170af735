using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Scriban.Runtime;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Sheets;
using Witnessmark.Records.Tags;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Tags;

/// <summary>The tags of one sheet on leaves to cut: one HTML file that needs nothing else, without script.</summary>
public static class TagPage
{
    /// <summary>The hash of this program's own templates and style of tags.</summary>
    public static string OwnTemplateHash => Resources.Hash("templates/tag", "site/tags.css");

    /// <param name="identity">Of the copy that they go with; its template hash is <see cref="OwnTemplateHash"/>.</param>
    /// <exception cref="ArgumentException">There is no tag to print.</exception>
    public static string Render(TagPlan tags, SheetPlan sheet, SheetIdentity identity, Paper paper, Words words)
    {
        if (tags.IsEmpty)
            throw new ArgumentException($"{sheet.Procedure.Id.Value} needs no tags", nameof(tags));
        var context = new SheetContext(sheet, identity, words);
        var leaves = Leaves.Lay(TagCards.Of(tags, context));
        var style = $"{Resources.Text("site/tags.css")}@page{{size:{(paper == Paper.A4 ? "A4" : "letter")}}}";
        return Templates.Render("tags.html", new ScriptObject
        {
            ["language"] = words.Language,
            ["policy"] = $"default-src 'none'; style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)))}'; base-uri 'none'; form-action 'none'",
            ["style"] = new RawHtml(style),
            ["title"] = $"{words.TagsFor} {PageRules.Identity(context)}",
            ["how"] = words.CutTearPunch,
            ["leaves"] = new ScriptArray(leaves.Select((leaf, i) => Leaf(leaf, i + 1, leaves.Length, context))),
        });
    }

    private static ScriptObject Leaf(ImmutableArray<Cut> cuts, int number, int of, SheetContext context)
    {
        var (words, identity) = (context.Words, context.Identity);
        var copy = identity.SetMark is { } mark ? $"{words.Copy} {mark}" : $"{words.Specimen}, {words.NotIssued}";
        var unit = identity.Unit is { } u ? $" · {words.Unit} {u} {identity.Place}" : "";
        return new ScriptObject
        {
            ["head"] = string.Create(CultureInfo.InvariantCulture, $"{words.TagsFor} {identity.Procedure}{unit} · {copy} · {words.Leaf} {number} {words.OutOf} {of}"),
            ["forms"] = $"{words.Forms} {ShortHash.Of(identity.TemplateHash)}",
            ["how"] = words.CutTearPunch,
            ["cuts"] = new ScriptArray(cuts.Select(c => Card(c, context))),
        };
    }

    private static ScriptObject Card(Cut cut, SheetContext context)
    {
        cut.Model["size"] = string.Create(CultureInfo.InvariantCulture, $"{(cut.Wide ? "wide" : "narrow")} rows{cut.Rows}");
        var (words, id) = (context.Words, context.Identity);
        var copy = id.SetMark is { } mark ? $"{words.Copy} {mark}" : words.Specimen;
        cut.Model["foot"] = new ScriptObject
        {
            ["identity"] = $"{id.Procedure} {id.Version} · {ShortHash.Of(id.Hash)} · {copy}",
            ["on"] = $"{id.Procedure} {copy}",
            ["notice"] = words.StandingNotice,
        };
        return cut.Model;
    }
}
