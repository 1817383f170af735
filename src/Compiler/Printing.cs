using System.Collections.Immutable;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Compiler;

/// <summary>Gathers the specimens that go to the press, or says why none does.</summary>
internal static class Printing
{
    public static SpecimensToPrint Specimens(Bench bench, PrintOrder order)
    {
        var library = bench.Library;
        if (Refusals.Of(library, order) is { } refusal)
            return new SpecimensToPrint([], refusal);
        var paper = Issuing.PaperOf(order.Paper ?? library.Workshop.Paper?.Value);
        ImmutableArray<SpecimenPrint> sheets =
        [
            .. library.Procedures
                .Where(p => order.Procedure is null ? !p.IsCommonPart : p.Id.Value == order.Procedure)
                .SelectMany(p => SheetWording.All(bench, p).SelectMany(w => Compiler.Specimens.Of(w, ProcedureHash.Of(library, p), order.Part)))
                .SelectMany(s => s.Prints(paper)),
        ];
        return sheets.IsEmpty
            ? new SpecimensToPrint([], new Refusal("There is no step to print a sheet of.", "Write one; witnessmark check says what is missing."))
            : new SpecimensToPrint(sheets, Refusal: null);
    }
}
