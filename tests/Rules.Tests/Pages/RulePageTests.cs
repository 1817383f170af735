using System.Collections.Immutable;
using Witnessmark.Checking;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Reading.Faults;
using Witnessmark.Rendering.Messages;
using Witnessmark.Rules.Tests.Workshops;

namespace Witnessmark.Rules.Tests.Pages;

/// <summary>The page of each rule is its first test: its examples are compiled as changes to the demo workshop.</summary>
public sealed class RulePageTests
{
    public static TheoryData<string> Pages => [.. RulePage.All().Select(p => p.Name)];

    private static IEnumerable<RuleInfo> Rules => RuleSet.All.Select(r => r.Info).Concat(DataFaults.All).Concat(StepFaults.All).Concat(TranslationFaults.All);

    [Fact]
    public void Every_rule_has_its_page_and_every_page_its_rule() =>
        Assert.Equal(Rules.Select(r => r.Name).Order(StringComparer.Ordinal), RulePage.All().Select(p => p.Name).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Pages))]
    public void The_wrong_example_is_found_by_its_rule(string name)
    {
        var findings = Compile(RulePage.Named(name).Wrong, name);
        Assert.True(findings.Any(f => f.Rule.Name == name), $"the wrong example of {name} is not found by it.{Listed(findings)}");
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void The_right_example_is_right(string name)
    {
        var page = RulePage.Named(name);
        var findings = Compile(page.Right, name).Where(f => f.Rule.Name == name || !page.Right.Any(e => e.AllowsOther)).ToList();
        Assert.True(findings.Count == 0, $"the right example of {name} has findings.{Listed(findings)}");
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void What_a_mechanic_reads_is_approved(string name)
    {
        var finding = Compile(RulePage.Named(name).Wrong, name).FirstOrDefault(f => f.Rule.Name == name);
        Assert.NotNull(finding);
        Approved.Check($"Rules.Tests/Approved/{name}.txt", new FindingText("procedures", Ink.None).Long(finding));
    }

    private static ImmutableArray<Finding> Compile(IEnumerable<PageExample> examples, string rule) =>
        examples.Aggregate(Demo(Rules.Single(r => r.Name == rule).Topic), (workshop, example) => example.Apply(workshop)).Findings();

    private static DemoWorkshop Demo(string topic) => topic switch
    {
        "Translations" => DemoWorkshop.Whole,
        "Register" => DemoWorkshop.Registered,
        "Changes" => DemoWorkshop.Changing,
        "Proof" => DemoWorkshop.Followed,
        _ => DemoWorkshop.InOneLanguage,
    };

    private static string Listed(IEnumerable<Finding> findings) =>
        string.Concat(findings.Select(f => $"\n  {new FindingText("procedures", Ink.None).Short(f).TrimEnd()}"));
}
