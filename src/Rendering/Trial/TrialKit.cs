using System.Collections.Immutable;
using System.Globalization;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Rendering.Trial;

/// <summary>What a shop needs to try a sheet on people: a sheet with planted errors, how to run it, a form, and the key on a page of its own.</summary>
public static class TrialKit
{
    internal const string Folder = "trial-kit/";

    /// <param name="pieces">Parts in order, each in every language.</param>
    /// <param name="instructions">By language, written by hand: site/pages/trial-kit.md.</param>
    public static ImmutableArray<OutputFile> Render(ImmutableArray<TrialPiece> pieces, IReadOnlyDictionary<string, ImmutableArray<Block>> instructions)
    {
        var tried = pieces.Select(p => new TriedSheet(p, Errors(p.Context))).ToImmutableArray();
        return
        [
            .. tried.SelectMany(t => Enum.GetValues<Paper>().Select(paper => OutputFile.Of(t.SheetPath(paper), Sheet(t.Piece.Context, t.Errors, paper)))),
            .. tried.SelectMany(t => new[] { TrialPages.Form(t), TrialPages.Key(t) }),
            .. tried.GroupBy(t => t.Words.Language).Select(sheets => TrialPages.Instructions([.. sheets], instructions[sheets.Key], Others(sheets.Key, tried))),
        ];
    }

    internal static ImmutableArray<PlantedError> Errors(SheetContext context) => new TrialSheet(context, Sheet(context, [], Paper.A4)).Errors();

    /// <summary>The true sheet, with TRIAL on every page, and these errors.</summary>
    internal static string Sheet(SheetContext context, ImmutableArray<PlantedError> errors, Paper paper)
    {
        var stray = errors.Select(e => e.StrayMark).OfType<string>().Select(mark => Stray(context, mark, paper));
        var html = SheetPage.Render(context, paper, Banner("@page", context.Words) + string.Concat(stray));
        return errors.SelectMany(e => e.Edits).Aggregate(html, (sheet, edit) => edit.In(sheet));
    }

    private static ImmutableArray<TriedSheet> Others(string language, ImmutableArray<TriedSheet> tried) =>
        [.. tried.Where(t => t.Words.Language != language).DistinctBy(t => t.Words.Language)];

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
}

/// <summary>A sheet with the errors that it has a place for.</summary>
internal sealed record TriedSheet(TrialPiece Piece, ImmutableArray<PlantedError> Errors)
{
    public Words Words => Piece.Words;

    public string SheetPath(Paper paper) => Path($"{Piece.File("sheet")}-{paper.ToString().ToLowerInvariant()}");

    public string PagePath(string kind) => Path(Piece.File(kind));

    /// <summary>One a language.</summary>
    public string IndexPath => Path($"index{Piece.Suffix}");

    private static string Path(string name) => $"{TrialKit.Folder}{name}.html";
}
