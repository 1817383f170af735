using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Sheets;
using Witnessmark.Records.Tags;
using Witnessmark.Rendering;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Fender;
using Witnessmark.Rendering.Site;
using Witnessmark.Rendering.Tags;

namespace Witnessmark.Compiler;

/// <summary>A sheet as it would print, marked as a specimen: to look at, not to work from.</summary>
internal sealed record Specimen(SheetPlan Plan, SheetIdentity Identity, SheetWording Wording)
{
    private enum Kind
    {
        Sheet,
        Card,
        Tags,
    }

    public Words Words => Wording.Words;

    private ImmutableArray<Kind> Kinds => TagPlanner.Plan(Plan).IsEmpty ? [Kind.Sheet, Kind.Card] : [Kind.Sheet, Kind.Card, Kind.Tags];

    /// <summary>The sheet, its fender card and, where its steps need any, its tags; each on every paper.</summary>
    public IEnumerable<OutputFile> Pages => OnPaper((kind, paper) => OutputFile.Of(Path(kind, paper), Html(kind, paper)));

    public IEnumerable<SheetLink> Links => OnPaper((kind, paper) => new SheetLink(
        string.Join(", ", new[] { Plan.Part.Name?.Value ?? "", Wording.IsTranslated ? SheetLanguages.Spoken(Words.Language) : "", Word(kind), paper.ToString() }.Where(t => t.Length > 0)), Path(kind, paper)));

    /// <summary>The same for the press, on one paper.</summary>
    public IEnumerable<SpecimenPrint> Prints(Paper paper) => Kinds.Select(kind => new SpecimenPrint($"{Name(kind, paper)}.pdf", ForPress(kind, paper)));

    private SheetIdentity CardIdentity => Identity with { TemplateHash = FenderCard.OwnTemplateHash };

    private string Html(Kind kind, Paper paper) => kind switch
    {
        Kind.Card => FenderCard.Render(Plan, CardIdentity, paper, Words),
        Kind.Tags => TagPage.Render(TagPlanner.Plan(Plan), Plan, Identity with { TemplateHash = TagPage.OwnTemplateHash }, paper, Words),
        _ => SheetPage.Render(Plan, Identity, paper, Words),
    };

    // a leaf of tags is a page and has its own code already
    private PressSheet ForPress(Kind kind, Paper paper) => kind switch
    {
        Kind.Card => FenderCard.ForPress(Plan, CardIdentity, paper, Words),
        Kind.Tags => new PressSheet(Html(kind, paper), Code: null),
        _ => SheetPage.ForPress(Plan, Identity, paper, Words),
    };

    private static string Word(Kind kind) => kind switch
    {
        Kind.Card => "card",
        Kind.Tags => "tags",
        _ => "",
    };

    private IEnumerable<T> OnPaper<T>(Func<Kind, Paper, T> make) => Kinds.SelectMany(kind => Enum.GetValues<Paper>().Select(paper => make(kind, paper)));

    private string Path(Kind kind, Paper paper) => $"sheets/{Name(kind, paper)}.html";

    // two hyphens: WB-40-strip and WB-40-tags may be procedures of their own
    private string Name(Kind kind, Paper paper)
    {
        var part = Plan.Part.Name is { } name ? $"--{SitePages.FileName(name.Value)}" : "";
        var language = Wording.IsTranslated ? $"-{Words.Language}" : "";
        return $"{SitePages.FileName(Plan.Procedure.Id.Value)}{part}{(kind == Kind.Sheet ? "" : $"--{Word(kind)}")}{language}-{paper.ToString().ToLowerInvariant()}";
    }
}

internal static class Specimens
{
    /// <summary>Of every sheet of a workshop, in each language that it is translated into. A common part has none of its own: it is printed inside the procedure that performs it.</summary>
    public static ImmutableArray<Specimen> Of(Bench bench, ImmutableDictionary<string, ProcedureHash> hashes) =>
    [
        .. bench.Library.Procedures.Where(p => !p.IsCommonPart).SelectMany(p => SheetWording.All(bench, p))
            .SelectMany(w => Of(w, hashes[w.Scope.Procedure.Id.Value], part: null)),
    ];

    /// <param name="part">Null: every part that has steps.</param>
    public static IEnumerable<Specimen> Of(SheetWording wording, ProcedureHash hash, string? part) =>
        from piece in wording.Scope.Procedure.Parts
        where piece.Steps.Any() && (part is null || piece.Name?.Value == part)
        select new Specimen(SheetPlanner.Plan(wording.Scope, piece.Name?.Value), Identity(wording, hash), wording);

    private static SheetIdentity Identity(SheetWording wording, ProcedureHash hash) => new(
        wording.Scope.Procedure.Id.Value, wording.Scope.Procedure.Version?.Value ?? "", hash.Hex, SetMark: null, Unit: null, Serial: null, Place: null, PrintedAt: "", SheetIdentity.OwnTemplateHash)
    {
        WordsHash = wording.Hash,
    };
}
