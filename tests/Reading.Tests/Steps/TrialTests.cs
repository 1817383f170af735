using Witnessmark.Language.Findings;
using Witnessmark.Reading.Steps;

namespace Witnessmark.Reading.Tests.Steps;

/// <summary>A whole workshop of nine procedures and a job, written in the language before there was a reader.</summary>
public sealed class TrialTests
{
    public static TheoryData<string> Files => [.. ProcedureFiles.In("tests", "Reading.Tests", "Trial")];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_procedure_of_the_trial_reads_without_finding(string path)
    {
        var findings = new FindingList();
        var procedure = ProcedureReader.Read(ProcedureFiles.Source(path), findings);
        Told.Nothing(findings);
        Assert.NotNull(procedure);
    }
}
