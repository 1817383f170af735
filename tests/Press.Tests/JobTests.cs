using Witnessmark.Harness;

namespace Witnessmark.Press.Tests;

/// <summary>A whole workshop that was written to try the language: nine procedures and a job.</summary>
[Collection("press")]
public sealed class JobTests(Room room)
{
    [Fact]
    public async Task A_job_and_the_procedures_that_it_performs_break_no_rule_on_paper()
    {
        var prints = Prints.Of(Repo.Files(Repo.Trial));
        Assert.Contains(prints, p => p.Plan.Procedure.IsJob);
        await room.Prove(prints);
    }
}
