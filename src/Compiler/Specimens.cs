using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Site;

namespace Witnessmark.Compiler;

/// <summary>A sheet as it would print, marked as a specimen: to look at, not to work from.</summary>
internal sealed record Specimen(SheetPlan Plan, SheetIdentity Identity)
{
    private Words Words => Words.Of(Plan.Procedure.Language?.Value);

    public OutputFile Page(Paper paper) => OutputFile.Of($"sheets/{Name(paper)}.html", SheetPage.Render(Plan, Identity, paper, Words));

    public SpecimenPrint Print(Paper paper) => new($"{Name(paper)}.pdf", SheetPage.ForPress(Plan, Identity, paper, Words));

    public SheetLink Link(Paper paper) => new(Plan.Part.Name is { } named ? $"{named.Value}, {paper}" : paper.ToString(), $"sheets/{Name(paper)}.html");

    // two hyphens: WB-40-strip may be a procedure of its own
    private string Name(Paper paper)
    {
        var part = Plan.Part.Name is { } name ? $"--{SitePages.FileName(name.Value)}" : "";
        return $"{SitePages.FileName(Plan.Procedure.Id.Value)}{part}-{paper.ToString().ToLowerInvariant()}";
    }
}

internal static class Specimens
{
    /// <summary>Of every sheet of a workshop. A common part has none of its own: it is printed inside the procedure that performs it.</summary>
    public static ImmutableArray<Specimen> Of(Library library, ImmutableDictionary<string, ProcedureHash> hashes) =>
        [.. library.Procedures.Where(p => !p.IsCommonPart).SelectMany(p => Of(library.ScopeOf(p), hashes[p.Id.Value], part: null))];

    /// <param name="part">Null: every part that has steps.</param>
    public static IEnumerable<Specimen> Of(Scope scope, ProcedureHash hash, string? part) =>
        from piece in scope.Procedure.Parts
        where piece.Steps.Any() && (part is null || piece.Name?.Value == part)
        select new Specimen(SheetPlanner.Plan(scope, piece.Name?.Value), Identity(scope.Procedure, hash));

    private static SheetIdentity Identity(Procedure procedure, ProcedureHash hash) => new(
        procedure.Id.Value, procedure.Version?.Value ?? "", hash.Hex, SetMark: null, Unit: null, Serial: null, Place: null, PrintedAt: "", SheetIdentity.OwnTemplateHash);
}
