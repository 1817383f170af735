using System.Collections.Immutable;
using Witnessmark.Checking;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading;
using Witnessmark.Reading.Records;
using Witnessmark.Reading.References;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Receiving;
using Witnessmark.Rendering.Site;

namespace Witnessmark.Compiler;

/// <summary>The way of the data, whole: files → library → findings → sheets, pages, copies, verdicts. Nothing here touches disk or clock.</summary>
public static class Pipeline
{
    /// <summary>Reads a workshop and holds every rule against it.</summary>
    public static Bench Check(IReadOnlyList<RawFile> files)
    {
        var findings = new FindingList();
        var library = WorkshopReader.Read(files, findings);
        ReferenceCheck.Check(library, findings);
        RuleSet.Check(library, findings);
        return new Bench(library, findings.InReadingOrder());
    }

    /// <summary>The files of a workshop whose layout is out of order, as they should be laid out. No procedure's hash changes by it.</summary>
    /// <param name="only">Path of one file; null for all.</param>
    public static TidiedWorkshop Tidy(IReadOnlyList<RawFile> files, string? only) => Tidying.Of(files, only);

    /// <summary>The files of a workshop with every correction carried out that a finding carries, checked again.</summary>
    /// <param name="only">Path of one file; null for all.</param>
    public static WorkshopPutRight PutRight(IReadOnlyList<RawFile> files, string? only) => PuttingRight.Of(files, only);

    public static ImmutableArray<OutputFile> Build(Bench bench, string programVersion) => Build(bench, programVersion, []);

    /// <summary>The site, and a specimen of every sheet and its tags on both papers.</summary>
    /// <param name="records">Sign-offs that came back: those that are complete show how parts wear.</param>
    public static ImmutableArray<OutputFile> Build(Bench bench, string programVersion, IReadOnlyList<RawFile> records) => Build(bench, programVersion, records, KeptVersions.None);

    /// <param name="kept">Texts of earlier versions, to show what each has changed and to receive what was worked from it.</param>
    public static ImmutableArray<OutputFile> Build(Bench bench, string programVersion, IReadOnlyList<RawFile> records, KeptVersions kept)
    {
        var hashes = bench.Library.Procedures.ToImmutableDictionary(p => p.Id.Value, p => ProcedureHash.Of(bench.Library, p));
        var specimens = Compiler.Specimens.Of(bench, hashes);
        return
        [
            .. SitePages.Render(SiteContent.Of(bench.Library, hashes, specimens, programVersion) with
            {
                Wear = ReturnedRecords.Wear(bench, records, kept),
                Versions = new VersionSteps(bench.Library, hashes, kept).All(),
            }),
            .. specimens.SelectMany(s => s.Pages),
        ];
    }

    /// <summary>The page that leads to the sites of workshops that stand side by side, each in the folder of its name.</summary>
    public static ImmutableArray<OutputFile> Doors(ImmutableArray<(string Folder, Bench Bench)> workshops, string programVersion) =>
        DoorPage.Render([.. workshops.Select(w => (w.Folder, w.Bench.Library))], programVersion);

    /// <summary>Specimens for the press: of one procedure, or of every sheet of the workshop.</summary>
    public static SpecimensToPrint Specimens(Bench bench, PrintOrder order) => Printing.Specimens(bench, order);

    /// <summary>Sheets with planted errors and what belongs to them, to try the sheets on people.</summary>
    public static TrialFiles TrialKit(Bench bench, TrialOrder order) => TrialKits.Of(bench, order);

    /// <summary>One copy of a released procedure: its sheet and the blank that goes with it.</summary>
    public static MadeCopy Issue(Bench bench, IssueOrder order) => Issuing.Copy(bench, order);

    /// <summary>Puts a version on record as released: from then on its number stands for its hash.</summary>
    public static RegisterChange Release(Bench bench, string procedure, string by, DateTimeOffset now) => Registering.Release(bench, procedure, by, now);

    public static RegisterChange Withdraw(Bench bench, string procedure, string version, string by, string? why, DateTimeOffset now) =>
        Registering.Withdraw(bench, procedure, version, by, why, now);

    /// <summary>Puts on record what became of a copy.</summary>
    public static RegisterChange EndCopy(Bench bench, string mark, CopyEnd end, string by, string? why, DateTimeOffset now) => Registering.End(bench, mark, end, by, why, now);

    /// <summary>Whether a workshop has, or once released, the procedure that a sign-off names.</summary>
    public static bool Knows(Library library, RawFile record) =>
        SignOffReader.Read(record, new FindingList())?.Procedure is { } id && (library.Procedure(id.Value) is not null || !library.Register.History(id.Value).IsEmpty);

    /// <summary>Holds a sign-off against the version that was printed. A text that cannot be read is refused as it stands.</summary>
    public static ReceptionResult Receive(Bench bench, RawFile record) => Receive(bench, record, KeptVersions.None);

    /// <param name="kept">Texts of earlier versions: work may have been finished before the one in force came.</param>
    public static ReceptionResult Receive(Bench bench, RawFile record, KeptVersions kept) => new Receiving(bench, kept).Hold(record).Result;

    /// <summary>What two states of a workshop differ in, by what they mean. Reads of them no more than that needs.</summary>
    /// <param name="only">Id of one procedure; null for all.</param>
    public static TwoStatesCompared Compare(IReadOnlyList<StoredFile> old, IReadOnlyList<StoredFile> made, string? only) => TwoStates.Compare(old, made, only);

    /// <summary>The bench with what following every way through each procedure and job finds.</summary>
    public static Bench CheckEveryWay(Bench bench)
    {
        var findings = new FindingList();
        findings.AddRange(bench.Findings);
        RuleSet.CheckEveryWay(bench.Library, findings);
        return bench with { Findings = findings.InReadingOrder() };
    }

    /// <summary>The bench with what the rules on changes say since an earlier state: version, approvals, what was left out.</summary>
    /// <param name="only">Id of one procedure; null for all.</param>
    public static Bench CheckSince(Bench bench, IReadOnlyList<StoredFile> old, IReadOnlyList<StoredFile> made, string? only = null)
    {
        var findings = new FindingList();
        findings.AddRange(bench.Findings);
        findings.AddRange(TwoStates.Findings(old, made, only));
        return bench with { Findings = findings.InReadingOrder() };
    }

    /// <summary>The same, with each procedure beside the version in force as well: five small drifts are one.</summary>
    public static TwoStatesCompared CompareSinceReleases(TwoStatesCompared compared, IReadOnlyList<StoredFile> made, Register register, Func<ReleasedVersion, IReadOnlyList<StoredFile>?> released) =>
        TwoStates.WithReleases(compared, made, register, released);

    /// <summary>The register alone, for who needs nothing else.</summary>
    public static Register Register(IReadOnlyList<StoredFile> files) => WorkshopReader.Read([.. files.Where(f => f.Path.StartsWith("register", StringComparison.Ordinal)).Select(f => f.Read())], new FindingList()).Register;

    /// <summary>A procedure to write on from, and a workshop when there are no files yet. What has a finding of its own is not handed out.</summary>
    public static DraftedFiles Draft(IReadOnlyList<RawFile> files, NewProcedure wanted)
    {
        var drafted = Drafting.Draft(files, wanted);
        var bench = Check([.. files, .. drafted.Files.Select(f => new RawFile(f.Path, f.Bytes.Length, f.Bytes))]);
        var own = bench.Findings.FirstOrDefault(f => drafted.Files.Any(d => d.Path == f.At.Source.Path));
        return own is null ? drafted : DraftedFiles.Refused($"The draft would begin with a finding: {own.Found}", own.PutRight);
    }

    /// <summary>A translation to be written over its original. Every place that still is the original's is a finding of it, so it is not printed before.</summary>
    public static DraftedFiles DraftTranslation(IReadOnlyList<RawFile> files, NewTranslation wanted)
    {
        var drafted = TranslationDrafting.Draft(files, wanted);
        var bench = Check([.. files, .. drafted.Files.Select(f => new RawFile(f.Path, f.Bytes.Length, f.Bytes))]);
        var fault = bench.Findings.FirstOrDefault(f => f.Severity == Severity.Fault && drafted.Files.Any(d => d.Path == f.At.Source.Path));
        return fault is null ? drafted : DraftedFiles.Refused($"The draft would begin with a fault: {fault.Found}", fault.PutRight);
    }
}
