using System.Diagnostics;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press.Tests;

/// <summary>What nobody has looked at yet: two hundred procedures that nobody wrote.</summary>
[Collection("press")]
public sealed class GeneratedPagesTests(Room room, ITestOutputHelper output)
{
    private const int Procedures = 200;

    [Fact]
    public async Task No_page_of_two_hundred_procedures_breaks_a_rule()
    {
        var watch = Stopwatch.StartNew();
        var prints = Prints.Of(Generated.Workshop(Procedures)).Where(p => p.Identity.Procedure.StartsWith("GP-", StringComparison.Ordinal)).Select((p, i) => (i % 4) switch
        {
            0 => p,
            1 => p.On(Paper.Letter),
            2 => p.Issued(Paper.A4),
            _ => p.Issued(Paper.Letter),
        }).ToList();
        Assert.Equal(Enumerable.Range(0, Procedures).Select(i => Generated.Steps(i, Procedures)), prints.Select(p => p.Plan.Sections.Sum(s => s.Steps.Length)));
        output.WriteLine($"planned {watch.Elapsed}");
        await room.Prove(prints);
        output.WriteLine($"printed and proved {watch.Elapsed}");
    }
}
