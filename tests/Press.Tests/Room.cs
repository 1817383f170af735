using System.Collections.Immutable;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Press.Tests.Proof;
using Witnessmark.Reading;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press.Tests;

/// <summary>One press for all tests.</summary>
public sealed class Room : IAsyncLifetime
{
    private PrintingPress? _press;

    public PrintingPress Press => _press ?? throw new InvalidOperationException("the press has not started");

    public async ValueTask InitializeAsync() => _press = await PrintingPress.Start(BrowserFinder.OfThisMachine.Find());

    public ValueTask DisposeAsync() => Press.DisposeAsync();

    internal async Task<ReadOnlyMemory<byte>> Print(PlannedPrint print) => (await Press.Print([print.Sheet]))[0].Pdf;
}

[CollectionDefinition("press")]
public sealed class RoomCollection : ICollectionFixture<Room>;

/// <summary>Prints of a workshop, planned as the program plans them.</summary>
internal static class Prints
{
    public static Library Demo { get; } = Read(Repo.Files(Repo.Path("procedures")));

    public static Library Read(IReadOnlyList<RawFile> files) => WorkshopReader.Read(files, new FindingList());

    public static ImmutableArray<PlannedPrint> Specimens(Library library, Paper paper) =>
    [
        .. from procedure in library.Procedures
           where !procedure.IsCommonPart
           from part in procedure.Parts
           where part.Steps.Any()
           select PlannedPrint.Of(SheetPlanner.Plan(library.ScopeOf(procedure), part.Name?.Value), Specimen(library, procedure), paper),
    ];

    public static PlannedPrint Wb40 => Specimens(Demo, Paper.A4).Single(p => p.Identity.Procedure == "WB-40");

    public static PlannedPrint Issued(PlannedPrint specimen, Paper paper) => PlannedPrint.Of(
        specimen.Plan, specimen.Identity with { SetMark = "K7M", Unit = "14", Serial = "0417", Place = "CL", PrintedAt = "2031-06-11 06:40" }, paper);

    private static SheetIdentity Specimen(Library library, Procedure procedure) => new(
        procedure.Id.Value, procedure.Version?.Value ?? "", ProcedureHash.Of(library, procedure).Hex, null, null, null, null, "", SheetIdentity.OwnTemplateHash);
}
