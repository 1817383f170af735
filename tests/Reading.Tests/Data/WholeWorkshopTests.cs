using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Reading.Tests.Steps;

namespace Witnessmark.Reading.Tests.Data;

public sealed class WholeWorkshopTests
{
    [Fact]
    public void The_demo_workshop_reads_without_finding()
    {
        var library = Read("tests", "Workshops", "one-brake");
        Assert.Equal("Cressel Ridge field crew", library.Workshop.Title?.Value);
        Assert.NotNull(library.Procedure("WB-40"));
        Assert.NotNull(library.Machines.Find("okr-34"));
    }

    /// <summary>
    /// Written before there was a reader. The language moved since; in its data files four lines changed: <c>stop > 15 min</c> is
    /// <c>stop above 15 min</c> (twice; ranges are written in words), <c>chunk: 5 to 9 steps</c> is <c>steps-in-section: 9</c>, and S34
    /// lost <c>every ledger = closed, every hold = passed</c>: no conditions of the language, since both hold always.
    /// </summary>
    [Fact]
    public void The_trial_workshop_reads_without_finding()
    {
        var library = Read("tests", "Workshops", "trial");
        Assert.Equal(10, library.Procedures.Count);
        var machine = library.Machines.Find("okr-34")!;
        Assert.Equal(60, machine.Interlocks.Count);
    }

    private static Library Read(params string[] folder)
    {
        var findings = new FindingList();
        var library = WorkshopReader.Read(Repo.Files(Repo.Path(folder)), findings);
        Assert.Equal("", Told.All(findings));
        return library;
    }
}
