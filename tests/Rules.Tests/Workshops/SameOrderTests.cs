using System.Text;
using Witnessmark.Checking;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading;

namespace Witnessmark.Rules.Tests.Workshops;

/// <summary>Files are read and checked on all cores. Nobody who reads the findings may notice.</summary>
public sealed class SameOrderTests
{
    private const int Copies = 30;

    /// <summary>The demo, and copies of one of its procedures from each of which other lines have been lost.</summary>
    private static readonly List<RawFile> Damaged = [.. Repo.Files(Repo.OneBrake), .. Enumerable.Range(0, Copies).Select(Copy)];

    [Fact]
    public void A_workshop_with_many_findings_says_them_in_the_same_order_every_time()
    {
        var first = Said(Pipeline.Check(Damaged).Findings);
        Assert.True(first.Length > 10 * Copies, $"only {first.Length} findings: too few to show anything");
        for (var run = 0; run < 10; run++)
            Assert.Equal(first, Said(Pipeline.Check(Damaged).Findings));
    }

    [Fact]
    public void Files_in_another_order_give_the_same_findings() =>
        Assert.Equal(Said(Pipeline.Check(Damaged).Findings), Said(Pipeline.Check([.. Enumerable.Reverse(Damaged)]).Findings));

    [Fact]
    public void All_cores_find_what_one_core_finds()
    {
        var library = WorkshopReader.Read(Damaged, new FindingList());
        var together = new FindingList();
        RuleSet.Check(library, together);
        var oneByOne = new FindingList();
        foreach (var machine in library.Machines)
            foreach (var rule in RuleSet.All)
                rule.Check(machine, library, oneByOne);
        foreach (var scope in library.Procedures.Select(library.ScopeOf))
            foreach (var rule in RuleSet.All)
                rule.Check(scope, oneByOne);
        Assert.Equal(Said(oneByOne.InReadingOrder()), Said(together.InReadingOrder()));
    }

    private static RawFile Copy(int number)
    {
        var model = Encoding.UTF8.GetString(Repo.Files(Repo.OneBrake).Single(f => f.Path == "wheel-end/wb-40.md").Bytes.Span);
        var text = model.Replace("procedure: WB-40", $"procedure: DX-{number:00}", StringComparison.Ordinal);
        var front = text.IndexOf("\n---", StringComparison.Ordinal);
        // every tenth line of the text below the front matter is lost, each time another one
        var body = text[front..].Split('\n').Where((_, i) => i < 2 || i % 10 != number % 10);
        return RawFile.Of($"damaged/dx-{number:00}.md", Encoding.UTF8.GetBytes(text[..front] + string.Join('\n', body)));
    }

    private static string[] Said(IEnumerable<Finding> findings) =>
        [.. findings.Select(f => $"{f.At.Source.Path}:{f.At.Span.Start}-{f.At.Span.End} {f.Rule.Name}: {f.Found} {f.PutRight} {string.Join(", ", f.Further.Select(p => $"{p.At.Source.Path}:{p.At.Span.Start} {p.Says}"))}")];
}
