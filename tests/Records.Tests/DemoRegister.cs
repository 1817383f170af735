using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Reading.Records;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Issuing;
using Witnessmark.Records.Registering;

namespace Witnessmark.Records.Tests;

/// <summary>
/// The register of the demo workshop has the demo as it stands, and the copies that its records were typed from. A word changed in the
/// demo changes its hash: WITNESSMARK_APPROVE=1 writes the register anew, as if all of it had been released and issued today.
/// </summary>
public sealed class DemoRegister
{
    [Fact]
    public void It_has_the_demo_as_it_stands_and_the_copies_of_its_records()
    {
        var path = Repo.Path("tests", "Workshops", "one-brake", "register.yaml");
        var today = Today();
        if (Environment.GetEnvironmentVariable("WITNESSMARK_APPROVE") == "1")
            File.WriteAllText(path, today);
        else
            Assert.True(today == File.ReadAllText(path).ReplaceLineEndings("\n"), "the register is of another version of the demo. Run with WITNESSMARK_APPROVE=1.");
    }

    internal static CopyIdentity CopyOf(SignOff head) =>
        new(Demo.Hash, head.Unit!.Value.Value, head.Serial!.Value.Value, head.Place!.Value.Value, head.Issued!.Value.Value, head.IssuedBy!.Value.Value);

    internal static string Mark(CopyIdentity copy) => SetMark.Free("K7", copy.Lines, _ => false)!;

    private static string Today()
    {
        var text = RegisterText.Begin("Cressel Ridge field crew");
        foreach (var (id, date) in new[] { ("WB-60", "2031-04-20"), ("WB-40", "2031-05-02") })
        {
            var procedure = Demo.Library.Procedure(id)!;
            text = RegisterText.Add(
                text, "released", ("procedure", id), ("version", procedure.Version!.Value.Value), ("hash", ProcedureHash.Of(Demo.Library, procedure).Hex), ("date", date), ("by", "RK"), ("approvals", new[] { "RK" }));
        }
        foreach (var file in Repo.Records(Repo.OneBrake))
        {
            var head = SignOffReader.Read(file, new FindingList())!;
            var copy = CopyOf(head);
            text = RegisterText.Add(
                text, "copies", ("copy", Mark(copy)), ("procedure", "WB-40"), ("version", head.Version!.Value.Value), ("hash", ShortHash.Plain(Demo.Hash.Hex)),
                ("unit", copy.Unit), ("serial", copy.Serial), ("place", copy.Place), ("issued", copy.IssuedAt), ("by", copy.IssuedBy), ("to", "MO"));
            text = RegisterText.Add(text, "ended", ("copy", Mark(copy)), ("returned", copy.IssuedAt[..10]), ("by", "RK"));
        }
        return text;
    }
}
