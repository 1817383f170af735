using System.Collections.Immutable;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.References;

namespace Witnessmark.Reading.Tests.Steps;

/// <summary>Common parts in the demo workshop that perform one another.</summary>
public sealed class PerformCircleTests
{
    [Fact]
    public void Two_common_parts_that_perform_each_other_are_one_circle()
    {
        var finding = Assert.Single(Findings(Common("WB-60", "WB-61", 1), Common("WB-61", "WB-60", 1)));
        Assert.Equal("perform-circle", finding.Rule.Name);
        Assert.Contains("WB-60 → WB-61 → WB-60", finding.Found, StringComparison.Ordinal);
        Assert.Equal("common/WB-61.md", finding.At.Source.Path);
    }

    [Fact]
    public void Parts_that_double_at_every_turn_are_refused_where_they_no_longer_fit_and_soon()
    {
        RawFile[] chain = [.. Enumerable.Range(60, 30).Select(n => Common($"WB-{n}", n == 89 ? null : $"WB-{n + 1}", 2))];
        var findings = Findings(chain);
        Assert.NotEmpty(findings);
        Assert.All(findings, f => Assert.Equal("too-many-steps", f.Rule.Name));
        Assert.Contains("more than 99 performed steps", findings[0].Found, StringComparison.Ordinal);
    }

    [Fact]
    public void A_common_part_performed_by_two_others_is_no_circle() =>
        Assert.Empty(Findings(Common("WB-60", "WB-62", 1), Common("WB-61", "WB-62", 2), Common("WB-62", null, 1)));

    private static ImmutableArray<Finding> Findings(params RawFile[] common)
    {
        var findings = new FindingList();
        var workshop = Repo.Files(Repo.OneBrake).Where(f => f.Path == "workshop.yaml");
        ReferenceCheck.Check(WorkshopReader.Read([.. workshop, .. common], findings), findings);
        return findings.InReadingOrder();
    }

    private static RawFile Common(string id, string? performs, int times)
    {
        var uses = performs is null ? "" : $"uses: {{{performs}: 1.0.0}}\n";
        var steps = Enumerable.Range(1, times).Select(n => $"{n}. **Do turn {n}.**\n{(performs is null ? "" : $"    - perform: {performs}\n")}\n");
        var text = $"---\nprocedure: {id}\ntitle: Turns\nversion: 1.0.0\nstatus: draft\ncommon-part: yes\n{uses}---\n\n# Turns\n\n{string.Concat(steps)}";
        return RawFile.Of($"common/{id}.md", System.Text.Encoding.UTF8.GetBytes(text));
    }
}
