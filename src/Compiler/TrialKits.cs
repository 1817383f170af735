using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Pages;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Issuing;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Html;
using Witnessmark.Rendering.Trial;

namespace Witnessmark.Compiler;

/// <summary>A kit to try one sheet on people, or why there is none.</summary>
public sealed record TrialFiles(ImmutableArray<OutputFile> Files, Refusal? Refusal);

internal static class TrialKits
{
    public static TrialFiles Of(Bench bench, string id)
    {
        if (bench.Library.Procedure(id) is not { IsCommonPart: false } procedure || !procedure.Parts[0].Steps.Any())
            return new TrialFiles([], new Refusal($"There is no sheet of {id} to try.", "--trial-kit takes the id of a procedure that is printed: WB-40."));
        var wording = SheetWording.Own(bench, procedure);
        var hash = ProcedureHash.Of(bench.Library, procedure);
        var identity = new SheetIdentity(
            procedure.Id.Value, procedure.Version?.Value ?? "", hash.Hex, Mark(hash, "one"), Unit: null, Serial: null, Place: null, PrintedAt: "", SheetIdentity.OwnTemplateHash);
        var plan = SheetPlanner.Plan(wording.Scope, procedure.Parts[0].Name?.Value);
        var instructions = PageReader.Read(new SourceText("trial-kit.md", Resources.Text("site/pages/trial-kit.md")));
        return new TrialFiles(TrialKit.Render(plan, identity, Mark(hash, "other"), [.. instructions.Where(b => b is not SubHeading { Level: 1 })], wording.Words), Refusal: null);
    }

    // no copy was ever issued to a trial, so receive knows none of its marks
    private static string Mark(ProcedureHash hash, string copy) => SetMark.Of(hash.Hex, "trial", "trial", "trial", copy, "trial");
}
