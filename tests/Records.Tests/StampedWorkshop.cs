using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading;
using Witnessmark.Reading.Records;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Issuing;
using Witnessmark.Records.Receiving;
using Witnessmark.Records.Registering;

namespace Witnessmark.Records.Tests;

/// <summary>
/// A workshop whose register and records have the hashes of today. A word changed in it changes hashes: WITNESSMARK_APPROVE=1 writes
/// them anew, as if all of it had been released and issued today.
/// </summary>
/// <param name="Folder">Where it lies.</param>
internal sealed partial record StampedWorkshop(string Folder)
{
    public Library Library { get; } = WorkshopReader.Read(Repo.Files(Folder), new FindingList());

    private static bool Approving => Environment.GetEnvironmentVariable("WITNESSMARK_APPROVE") == "1";

    public IEnumerable<string> RecordPaths => Repo.Records(Folder).Select(r => r.Path);

    /// <summary>Released procedures as they stand, in the order of their approvals, and the copies that the records were typed from.</summary>
    public void HoldsItsRegister()
    {
        var path = Path.Combine(Folder, "register.yaml");
        var today = RegisterOfToday();
        if (Approving)
            File.WriteAllText(path, today);
        else
            Assert.True(today == File.ReadAllText(path).ReplaceLineEndings("\n"), $"the register of {Library.Workshop!.Title} is of other words. Run with WITNESSMARK_APPROVE=1.");
    }

    /// <summary>The record was typed from what the procedure says today, and becomes what is expected of it.</summary>
    public void HoldsRecord(string path, ReceptionState state)
    {
        var file = Path.Combine(Folder, path);
        var typed = File.ReadAllText(file);
        var today = Stamped(typed);
        if (Approving)
            File.WriteAllText(file, today);
        else
            Assert.True(today == typed, $"{path} was typed from other words. Run with WITNESSMARK_APPROVE=1.");
        var findings = new FindingList();
        var signOff = SignOffReader.Read(RawFile.Of(path, Encoding.UTF8.GetBytes(today)), findings);
        var result = Reception.Hold(signOff!, Library with { Register = OfToday() }, []);
        Assert.Equal(state, result.State);
        Assert.Empty(findings.InReadingOrder());
    }

    private Register OfToday() =>
        WorkshopReader.Read([RawFile.Of("register.yaml", Encoding.UTF8.GetBytes(RegisterOfToday()))], new FindingList()).Register;

    private string RegisterOfToday()
    {
        var text = RegisterText.Begin(Library.Workshop!.Title!.Value.Value);
        foreach (var (procedure, approval) in Released())
            text = RegisterText.Add(
                text, "released", ("procedure", procedure.Id.Value), ("version", procedure.Version!.Value.Value), ("hash", ProcedureHash.Of(Library, procedure).Hex),
                ("date", approval.Date!.Value.Value), ("by", approval.By!.Value.Value), ("approvals", procedure.Approvals.Select(a => a.By!.Value.Value)));
        foreach (var file in Repo.Records(Folder))
        {
            var head = SignOffReader.Read(file, new FindingList())!;
            var copy = CopyOf(head);
            text = RegisterText.Add(
                text, "copies", ("copy", Mark(copy)), ("procedure", head.Procedure!.Value.Value), ("version", head.Version!.Value.Value), ("hash", ShortHash.Plain(copy.Hash.Hex)),
                ("unit", copy.Unit), ("serial", copy.Serial), ("place", copy.Place), ("issued", copy.IssuedAt), ("by", copy.IssuedBy), ("to", "MO"));
            text = RegisterText.Add(text, "ended", ("copy", Mark(copy)), ("returned", copy.IssuedAt[..10]), ("by", copy.IssuedBy));
        }
        return text;
    }

    private IEnumerable<(Procedure Procedure, Approval Last)> Released() =>
        Library.Procedures.Where(p => p.Status?.Value == ReleaseStatus.Released)
            .Select(p => (p, Last: p.Approvals.MaxBy(a => a.Date!.Value.Value, StringComparer.Ordinal)!))
            .OrderBy(r => r.Last.Date!.Value.Value, StringComparer.Ordinal).ThenBy(r => r.p.Id.Value, StringComparer.Ordinal);

    private ProcedureHash HashOf(SignOff head) => ProcedureHash.Of(Library, Library.Procedure(head.Procedure!.Value.Value)!);

    private CopyIdentity CopyOf(SignOff head) =>
        new(HashOf(head), head.Unit!.Value.Value, head.Serial!.Value.Value, head.Place!.Value.Value, head.Issued!.Value.Value, head.IssuedBy!.Value.Value);

    private static string Mark(CopyIdentity copy) => SetMark.Free("K7", copy.Lines, _ => false)!;

    private string Stamped(string typed)
    {
        var hash = HashLine().Replace(typed, $"hash: {HashOf(Head(typed)).Short12}");
        return CopyLine().Replace(hash, $"copy: {YamlScalar.Of(Mark(CopyOf(Head(hash))))}");
    }

    private static SignOff Head(string typed) => SignOffReader.Read(RawFile.Of("record.yaml", Encoding.UTF8.GetBytes(typed)), new FindingList())!;

    [GeneratedRegex("^hash: .*$", RegexOptions.Multiline)]
    private static partial Regex HashLine();

    [GeneratedRegex("^copy: .*$", RegexOptions.Multiline)]
    private static partial Regex CopyLine();
}
