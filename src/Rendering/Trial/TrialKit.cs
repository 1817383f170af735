using System.Collections.Immutable;
using System.Globalization;
using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Trial;

/// <summary>What a shop needs to try a sheet on people: a sheet with planted errors, how to run it, a form, and the key on a page of its own.</summary>
public static class TrialKit
{
    private const string Folder = "trial-kit/";

    private static readonly string[] Conditions = ["bare hands", "work gloves", "oily gloves", "shade", "sun on the sheet", "head lamp"];

    /// <param name="identity">Of a copy that was never issued.</param>
    /// <param name="otherMark">Set mark of the copy that a page has strayed from.</param>
    /// <param name="instructions">Written by hand: site/pages/trial-kit.md.</param>
    public static ImmutableArray<OutputFile> Render(SheetPlan plan, SheetIdentity identity, string otherMark, ImmutableArray<Block> instructions, Words words)
    {
        var context = new SheetContext(plan, identity, words);
        var errors = Errors(context, otherMark);
        return
        [
            .. Enum.GetValues<Paper>().Select(p => OutputFile.Of($"{Folder}sheet-{p.ToString().ToLowerInvariant()}.html", Sheet(context, errors, p))),
            Page("index", "How to run it", "trial-instructions.html", new ScriptObject { ["body"] = ProseHtml.Blocks(instructions), ["count"] = errors.Length }, context),
            Page("form", "Scoring form", "trial-form.html", Form(errors, context), context),
            Page("key", "Key: for the one who scores", "trial-key.html", Key(errors), context),
        ];
    }

    internal static ImmutableArray<PlantedError> Errors(SheetContext context, string otherMark) =>
        new TrialSheet(context, Sheet(context, [], Paper.A4), otherMark).Errors();

    /// <summary>The true sheet, with TRIAL on every page, and these errors.</summary>
    internal static string Sheet(SheetContext context, ImmutableArray<PlantedError> errors, Paper paper)
    {
        var stray = errors.Select(e => e.StrayMark).OfType<string>().Select(mark => Stray(context, mark, paper));
        var html = SheetPage.Render(context, paper, Banner("@page", context.Words) + string.Concat(stray));
        return errors.SelectMany(e => e.Edits).Aggregate(html, (sheet, edit) => edit.In(sheet));
    }

    // where the count stands; the count is at the foot too
    private static string Banner(string page, Words words) =>
        $"\n{page}{{@top-center{{content:{PageRules.Quote(words.Trial)};font-size:var(--top-text);border:var(--thick) solid #000;padding:0 2mm;vertical-align:middle}}}}";

    // the head of the sheet is the first of its kind, so the last part is one further
    private static string Stray(SheetContext context, string mark, Paper paper)
    {
        var other = context with { Identity = context.Identity with { SetMark = mark } };
        var margins = PageRules.Of(other, paper, PrintKind.Sheet(context.Words), code: true).Replace("@page{", "@page stray{", StringComparison.Ordinal);
        return string.Create(CultureInfo.InvariantCulture, $"\n.part:nth-of-type({context.Plan.Sections.Length + 1}){{page:stray}}\n{margins}{Banner("@page stray", context.Words)}");
    }

    private static OutputFile Page(string name, string title, string template, ScriptObject content, SheetContext context)
    {
        var style = Resources.Text("site/trial.css");
        return OutputFile.Of($"{Folder}{name}.html", Templates.Render("trial.html", new ScriptObject
        {
            ["policy"] = SheetPage.Policy(style),
            ["style"] = new RawHtml(style),
            ["title"] = $"{title}, {context.Identity.Procedure} {context.Identity.Version}",
            ["banner"] = Words.English.Trial,
            ["identity"] = PageRules.Identity(context),
            ["notice"] = Words.English.StandingNotice,
            ["content"] = new RawHtml(Templates.Render(template, content)),
        }));
    }

    private static ScriptObject Form(ImmutableArray<PlantedError> errors, SheetContext context) => new()
    {
        ["sheet"] = PageRules.Identity(context),
        ["finds"] = new ScriptArray(Enumerable.Range(1, errors.Length + 2)),
        ["conditions"] = new ScriptArray(Conditions),
    };

    private static ScriptObject Key(ImmutableArray<PlantedError> errors) => new()
    {
        ["errors"] = new ScriptArray(errors.Select((e, i) => new ScriptObject
        {
            ["number"] = i + 1, ["kind"] = e.Kind, ["where"] = e.Where, ["was"] = e.Was, ["becomes"] = e.Becomes,
        })),
    };
}
