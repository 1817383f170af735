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
internal sealed record Specimen(string Procedure, string Says, OutputFile File)
{
    public SheetLink Link => new(Says, File.Path);
}

internal static class Specimens
{
    public static ImmutableArray<Specimen> Of(Library library, ImmutableDictionary<string, ProcedureHash> hashes) =>
    [
        // a common part has no sheet of its own: it is printed inside the procedure that performs it
        .. library.Procedures.Where(p => !p.IsCommonPart).SelectMany(p => Of(library.ScopeOf(p), hashes[p.Id.Value])),
    ];

    private static IEnumerable<Specimen> Of(Scope scope, ProcedureHash hash)
    {
        foreach (var part in scope.Procedure.Parts.Where(p => p.Steps.Any()))
        {
            var plan = SheetPlanner.Plan(scope, part.Name?.Value);
            foreach (var paper in Enum.GetValues<Paper>())
                yield return Make(plan, hash, paper);
        }
    }

    private static Specimen Make(SheetPlan plan, ProcedureHash hash, Paper paper)
    {
        var procedure = plan.Procedure;
        var identity = new SheetIdentity(
            procedure.Id.Value, procedure.Version?.Value ?? "", hash.Hex, SetMark: null, Unit: null, Serial: null, Place: null, PrintedAt: "", SheetIdentity.OwnTemplateHash);
        var html = SheetPage.Render(plan, identity, paper, Words.Of(procedure.Language?.Value));
        // two hyphens: WB-40-strip may be a procedure of its own
        var part = plan.Part.Name is { } name ? $"--{SitePages.FileName(name.Value)}" : "";
        var path = $"sheets/{SitePages.FileName(procedure.Id.Value)}{part}-{paper.ToString().ToLowerInvariant()}.html";
        var says = plan.Part.Name is { } named ? $"{named.Value}, {paper}" : paper.ToString();
        return new Specimen(procedure.Id.Value, says, OutputFile.Of(path, html));
    }
}
