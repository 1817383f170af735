using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Records.Receiving;

namespace Witnessmark.Records.Tests;

/// <summary>The page of a reason is its first test: its examples, laid over a sign-off that is complete.</summary>
public sealed class ReasonPages
{
    /// <summary>What is missing cannot be laid over: shown by the case open-stopped-before-the-ring.</summary>
    private const string Missing = "entry-missing";

    /// <summary>The demo with what it has none of: a wrench behind an adapter, and a choice on which a step depends.</summary>
    private static readonly Library Richer = Demo.Changed([
        ("common/wb-60.md", c => c.Replace("    - inspect: wrench-fit\n", "    - inspect: wrench-fit\n    - work-out: setting of {wrench} for {group} with CF-24\n", StringComparison.Ordinal)),
        ("tools/crane-truck.yaml", c => c.Replace("gauges:\n", "  CF-24: {kind: adapter, extension: 0.13 m, angle: 0 deg}\n\ngauges:\n", StringComparison.Ordinal)),
        ("wheel-end/wb-40.md", c => c
            .Replace("end-plate = 2\n", "end-plate = 2\n    - decide: pile\n    - outcome: full when disc-thickness = good\n    - outcome: short otherwise\n", StringComparison.Ordinal)
            .Replace("    - tools: oil-can\n", "    - tools: oil-can\n    - only-if: pile = full\n", StringComparison.Ordinal)),
    ]);

    private static readonly string Rich = Receptions.Complete
        .Replace("    wrench-fit: right\n", "    wrench-fit: right\n    setting: 200 N·m\n", StringComparison.Ordinal)
        .Replace("    end-plate: 2\n", "    end-plate: 2\n    pile: full\n", StringComparison.Ordinal);

    public static TheoryData<string> Names => [.. ReasonSet.All.Select(r => r.Info.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_reason_has_a_page_with_what_it_is_why_it_matters_and_both_examples(string name)
    {
        var page = Page(name);
        Assert.StartsWith($"# {name}\n\n", page, StringComparison.Ordinal);
        Assert.Contains("\n## Why it matters\n", page, StringComparison.Ordinal);
        Assert.NotEmpty(Example(page, "Refused"));
        Assert.NotEmpty(Example(page, "Accepted"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_first_example_of_a_page_is_held_up_for_that_reason(string name)
    {
        if (name != Missing)
            Assert.Contains(name, Found(Page(name), "Refused"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_second_example_of_a_page_passes(string name) => Assert.Empty(Found(Page(name), "Accepted"));

    [Fact]
    public void Reasons_have_names_of_their_own_and_the_topic_sign_off()
    {
        Assert.Equal(ReasonSet.All.Length, ReasonSet.All.Select(r => r.Info.Name).Distinct().Count());
        Assert.All(ReasonSet.All, r => Assert.Equal("Sign-off", r.Info.Topic));
        Assert.All(ReasonSet.All, r => Assert.NotEqual(Severity.Remark, r.Info.Severity));
    }

    private static IEnumerable<string> Found(string page, string heading)
    {
        var library = page.Contains("\n## The register\n", StringComparison.Ordinal) ? Richer with { Register = Demo.Register(Example(page, "The register"), Richer) } : Richer;
        var signOff = Demo.Read("records/example.yaml", Overlay.Of(Rich, Example(page, heading)), Richer);
        return Reception.Hold(signOff, library, []).Findings.Select(f => f.Rule.Name);
    }

    private static string Page(string name)
    {
        var file = string.Concat(name.Split('-').Select(w => char.ToUpperInvariant(w[0]) + w[1..])) + ".md";
        return Repo.Read("src", "Records", "Receiving", "Reasons", file).ReplaceLineEndings("\n");
    }

    private static string Example(string page, string heading)
    {
        var after = page[(page.IndexOf($"\n## {heading}\n", StringComparison.Ordinal) + 1)..];
        var start = after.IndexOf("```yaml\n", StringComparison.Ordinal) + "```yaml\n".Length;
        return after[start..after.IndexOf("```", start, StringComparison.Ordinal)];
    }
}
