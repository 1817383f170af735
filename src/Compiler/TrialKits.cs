using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Pages;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Issuing;
using Witnessmark.Rendering.Html;
using Witnessmark.Rendering.Trial;

namespace Witnessmark.Compiler;

/// <summary>Which sheets are to be tried on people.</summary>
/// <param name="Procedure">Or null for none.</param>
/// <param name="Part">A part of the procedure, or null for all.</param>
public sealed record TrialOrder(string? Procedure, string? Part = null);

/// <summary>A kit to try sheets on people, or why there is none. Without files when none was asked for.</summary>
public sealed record TrialFiles(ImmutableArray<OutputFile> Files, Refusal? Refusal);

internal static class TrialKits
{
    public static TrialFiles Of(Bench bench, TrialOrder order)
    {
        var library = bench.Library;
        if (Refusals.Of(library, order) is { } refusal)
            return new TrialFiles([], refusal);
        if (order.Procedure is null)
            return new TrialFiles([], Refusal: null);
        var procedure = library.Procedure(order.Procedure)!;
        var hash = ProcedureHash.Of(library, procedure);
        ImmutableArray<TrialPiece> pieces = [.. SheetWording.All(bench, procedure).SelectMany(w => Pieces(w, hash, order.Part))];
        return pieces.IsEmpty
            ? new TrialFiles([], new Refusal("There is no step to try a sheet of.", "Write one; witnessmark check says what is missing."))
            : new TrialFiles(TrialKit.Render(pieces, SheetLanguages.All.ToDictionary(l => l, Instructions)), Refusal: null);
    }

    private static IEnumerable<TrialPiece> Pieces(SheetWording wording, ProcedureHash hash, string? part) =>
        from specimen in Specimens.Of(wording, hash, part)
        let mark = TrialMark.Of(hash.Hex, specimen.Plan.Part.Name?.Value, wording.Words.Language)
        select new TrialPiece(specimen.Plan, specimen.Identity with { SetMark = mark }, wording.Words, wording.IsTranslated);

    private static ImmutableArray<Block> Instructions(string language)
    {
        var name = language == SheetLanguages.English ? "trial-kit.md" : $"trial-kit-{language}.md";
        return [.. PageReader.Read(new SourceText(name, Resources.Text($"site/pages/{name}"))).Where(b => b is not SubHeading { Level: 1 })];
    }
}
