using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Scriban.Runtime;
using Witnessmark.Engineering.Printing;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Checklist.InWords;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Fender;

/// <summary>
/// The numbers of a sheet on a page to hang beside the work, read at twice an arm's length. It asks for nothing to be written and
/// replaces no step. One HTML file that needs nothing else, without script.
/// </summary>
public static class FenderCard
{
    // in the left margin, where no number can be punched away
    private static readonly string[] HolePlaces = ["left-top", "left-middle", "left-bottom"];

    /// <summary>The hash of this program's own templates, styles and measures of cards.</summary>
    public static string OwnTemplateHash => Convert.ToHexStringLower(SHA256.HashData(
        Encoding.UTF8.GetBytes(Resources.Hash(PrintHead.Template, "templates/card", "templates/sheet-limits", "site/card.css", "site/sheet.css", Resources.Figures) + SheetMeasures.Root)));

    /// <param name="identity">Of the copy that it goes with; its template hash is <see cref="OwnTemplateHash"/>.</param>
    public static string Render(SheetPlan plan, SheetIdentity identity, Paper paper, Words words) =>
        Render(new SheetContext(plan, identity, words), paper, code: true);

    /// <summary>The same card without the code at its foot: on the press every page gets its own.</summary>
    public static PressSheet ForPress(SheetPlan plan, SheetIdentity identity, Paper paper, Words words)
    {
        var context = new SheetContext(plan, identity, words);
        return new PressSheet(Render(context, paper, code: false), PageRules.CodePlace(context, PrintKind.Card(words)));
    }

    private static string Render(SheetContext context, Paper paper, bool code)
    {
        var (plan, identity, words) = (context.Plan, context.Identity, context.Words);
        var style = SheetMeasures.Root + Resources.Text("site/sheet.css") + Resources.Text("site/card.css")
            + PageRules.Of(context, paper, PrintKind.Card(words), code) + Holes();
        return Templates.Render("card.html", new ScriptObject
        {
            ["print"] = PrintHead.Of(words.Language, $"{PageRules.Identity(context)} · {words.FenderCard}", style),
            ["top"] = PageRules.Top(context),
            ["mark"] = identity.SetMark ?? words.Specimen,
            ["identity"] = PageRules.Identity(context),
            ["printed"] = PageRules.Printed(context),
            ["foot"] = new ScriptArray(PageRules.Foot(context)),
            ["no_foot"] = words.NoFoot,
            ["one_side"] = words.OneSide,
            ["title"] = string.Join(" · ", new[] { plan.Procedure.Title?.Value ?? plan.Procedure.Id.Value, plan.Part.Name is { } part ? context.Tongue.Name(part.Value) : null }.OfType<string>()),
            ["how"] = words.CardOnly,
            ["words"] = Headings(words),
            ["stops"] = Stops(context),
            ["torques"] = new ScriptArray(CardNumbers.Torques(context)),
            ["counts"] = new ScriptArray(CardNumbers.Counts(context)),
            ["limits"] = new ScriptArray(CardNumbers.Limits(context)),
            ["devices"] = new ScriptArray(CardNumbers.Devices(context)),
        });
    }

    private static ScriptObject Headings(Words words) => new()
    {
        ["torques"] = words.Torques,
        ["counts"] = words.Counts,
        ["limits"] = words.Limits,
        ["stop_if"] = words.StopIf,
        ["devices"] = words.DevicesIn,
        ["stops"] = words.SafeStops,
    };

    /// <summary>Nothing where the machine does not say when it may be left.</summary>
    private static string Stops(SheetContext context)
    {
        var stops = new StopWords(context.Plan, context.Words);
        return !stops.AreKnown ? "" : stops.All is { Length: > 0 } steps ? $"{context.Words.AfterStep} {steps}" : context.Words.NoneOnThisSheet;
    }

    private static string Holes()
    {
        var size = SheetMeasures.ClipHole.Millimetres;
        var hole = string.Create(CultureInfo.InvariantCulture,
            $"<svg xmlns='http://www.w3.org/2000/svg' width='{size}mm' height='{size}mm' viewBox='0 0 14 14'><circle cx='7' cy='7' r='6.5' fill='none' stroke='#000'/><path d='M7 4v6M4 7h6' stroke='#000'/></svg>");
        return string.Concat(HolePlaces.Select(place => $"@page{{@{place}{{content:url(\"data:image/svg+xml,{Uri.EscapeDataString(hole)}\")}}}}"));
    }
}
