using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Reading;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Issuing;
using Witnessmark.Records.Receiving;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Tests;

/// <summary>The large trial workshop: nine procedures in parts and a job that performs them, 239 steps.</summary>
public sealed class TrialWorkshop
{
    private static readonly Library Library = WorkshopReader.Read(Repo.Files(Repo.Trial), new FindingList());

    public static TheoryData<string, string?> Parts
    {
        get
        {
            var parts = new TheoryData<string, string?>();
            foreach (var procedure in Library.Procedures)
                foreach (var part in procedure.Parts)
                    parts.Add(procedure.Id.Value, part.Name?.Value);
            return parts;
        }
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void Every_part_makes_a_blank_that_is_open_and_in_which_nothing_is_wrong(string id, string? part)
    {
        var procedure = Library.Procedure(id)!;
        var plan = SheetPlanner.Plan(Library.ScopeOf(procedure), part);
        var copy = new CopyIdentity(ProcedureHash.Of(Library, procedure), "14", "0417", "CL", "2031-06-11T06:40+02:00", "RK");
        var result = Reception.Hold(Demo.Read("records/blank.yaml", BlankSignOff.Write(plan, copy)), Library, []);
        Assert.Equal(ReceptionState.Open, result.State);
        Assert.Equal(0, result.Given);
        // a step code stands for one step of the sheet
        Assert.Equal(plan.Steps.Count(), plan.Steps.Select(s => s.Code.ToString()).Distinct().Count());
    }

    [Fact]
    public void No_two_procedures_have_one_hash()
    {
        var hashes = Library.Procedures.Select(p => ProcedureHash.Of(Library, p).Hex).ToList();
        Assert.True(hashes.Count >= 10);
        Assert.Equal(hashes.Count, hashes.Distinct().Count());
    }
}
