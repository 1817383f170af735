using System.Collections.Immutable;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Language.Text;
using Witnessmark.Press.Tests.Proof;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Tags;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press.Tests;

/// <summary>One press for all tests.</summary>
public sealed class Room : IAsyncLifetime
{
    private PrintingPress? _press;

    public PrintingPress Press => _press ?? throw new InvalidOperationException("the press has not started");

    public async ValueTask InitializeAsync() => _press = await PrintingPress.Start(BrowserFinder.OfThisMachine.Find());

    public ValueTask DisposeAsync() => Press.DisposeAsync();

    /// <summary>No page of any of them breaks a rule.</summary>
    internal async Task Prove(IReadOnlyList<PlannedPrint> prints)
    {
        Assert.NotEmpty(prints);
        var printed = await Press.Print([.. prints.Select(p => p.Sheet)]);
        var broken = prints.Zip(printed).AsParallel().AsOrdered().SelectMany(p => ProvedPages.Broken(p.Second.Pdf, p.First).Select(b => $"{p.First}: {b}")).ToList();
        Assert.True(broken.Count == 0, string.Join('\n', broken));
    }

    internal async Task<ReadOnlyMemory<byte>> Print(PlannedPrint print) => (await Press.Print([print.Sheet]))[0].Pdf;
}

[CollectionDefinition("press")]
public sealed class RoomCollection : ICollectionFixture<Room>;

/// <summary>Specimens of a workshop, planned as the program plans them.</summary>
internal static class Prints
{
    public static ImmutableArray<SheetPrint> Demo { get; } = Of(Repo.Files(Repo.OneBrake));

    public static SheetPrint Wb40 => Demo.First(p => p.Identity.Procedure == "WB-40");

    /// <summary>Whatever rules the procedures break: only the paper is proved here.</summary>
    public static ImmutableArray<SheetPrint> Of(IReadOnlyList<RawFile> files) => Of(Pipeline.Check(files));

    public static ImmutableArray<SheetPrint> Of(Bench bench)
    {
        var hashes = bench.Library.Procedures.ToImmutableDictionary(p => p.Id.Value, p => ProcedureHash.Of(bench.Library, p));
        return [.. Specimens.Of(bench, hashes).Select(s => SheetPrint.Of(s.Plan, s.Identity, s.Words, Paper.A4))];
    }

    public static CardPrint Card(SheetPrint of, Paper paper) => CardPrint.Of(of.Plan, of.Identity, of.Words, paper);

    /// <summary>Nothing where the steps need none.</summary>
    public static IEnumerable<TagPrint> Tags(SheetPrint of, Paper paper) =>
        TagPlanner.Plan(of.Plan).IsEmpty ? [] : [TagPrint.Of(of.Plan, of.Identity, of.Words, paper)];
}
