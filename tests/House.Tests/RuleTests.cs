using System.Text.RegularExpressions;
using Witnessmark.Checking;
using Witnessmark.Language.Findings;
using Witnessmark.Reading.Faults;
using Witnessmark.Records.Receiving;

namespace Witnessmark.House.Tests;

/// <summary>What a rule consists of: a name for good, a file, a page with examples, a line in the list of names.</summary>
public sealed partial class RuleTests
{
    private static readonly string[] Kinds = ["IProcedureRule", "ISheetRule", "IMeasuringRule", "ITranslationRule", "IRegisterRule", "IChangeRule", "IHouseChangeRule", "IWayRule"];

    private static readonly IReadOnlyList<RuleInfo> Rules = [.. RuleSet.All.Select(r => r.Info)];

    /// <summary>All names that a finding can come under, wherever it is made.</summary>
    private static readonly IReadOnlyList<RuleInfo> Everywhere =
        [.. Rules, .. DataFaults.All, .. StepFaults.All, .. TranslationFaults.All, .. ReasonSet.All.Select(r => r.Info)];

    private static readonly IReadOnlyList<NameLine> Lines = NameLine.ReadAll();

    public static TheoryData<string> Names => [.. Rules.Select(r => r.Name)];

    public static TheoryData<string> AllNames => [.. Everywhere.Select(r => r.Name).Distinct()];

    [Fact]
    public void A_name_stands_for_one_thing() =>
        Assert.Empty(Everywhere.GroupBy(r => r.Name).Where(g => g.Count() > 1).Select(g => $"{g.Key}: {string.Join(", ", g.Select(r => r.Topic))}"));

    [Theory]
    [MemberData(nameof(AllNames))]
    public void A_name_is_small_words_with_hyphens(string name) => Assert.Matches(Kebab(), name);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_rule_has_its_file_named_for_the_fault(string name) => Assert.True(House.Exists(Place(name, ".cs")), $"{Place(name, ".cs")} is missing");

    [Theory]
    [MemberData(nameof(Names))]
    public void A_rule_has_its_page_with_a_wrong_and_a_right_example(string name) => HasExamples(Place(name, ".md"), name);

    [Fact]
    public void Every_rule_in_the_folder_is_in_the_list()
    {
        var files = House.Files("src/Checking/Rules", ".cs").Where(f => Kinds.Any(k => House.Read(f).Contains($": {k}\n", StringComparison.Ordinal)));

        Assert.Equal(Rules.Select(r => Place(r.Name, ".cs")).Order(StringComparer.Ordinal), files);
    }

    [Fact]
    public void Every_page_in_the_folder_belongs_to_a_rule() =>
        Assert.Equal(Rules.Select(r => Place(r.Name, ".md")).Order(StringComparer.Ordinal), House.Files("src/Checking/Rules", ".md"));

    [Fact]
    public void Every_reason_to_hold_up_a_sign_off_has_its_page() =>
        Assert.Empty(ReasonSet.All.Select(r => $"src/Records/Receiving/Reasons/{Pascal(r.Info.Name)}.md").Where(p => !House.Exists(p)));

    [Fact]
    public void Every_fault_of_the_text_has_its_page() =>
        Assert.Empty(DataFaults.All.Concat(StepFaults.All).Concat(TranslationFaults.All).Select(f => $"src/Reading/Faults/{f.Name}.md").Where(p => !House.Exists(p)));

    [Fact]
    public void Every_name_in_use_has_its_line_and_no_line_is_gone_unsaid()
    {
        Assert.Empty(Everywhere.Select(r => r.Name).Distinct().Except(Lines.Where(l => l.GoneIn is null).Select(l => l.Name)).Order());
        Assert.Empty(Lines.Where(l => l.GoneIn is null).Select(l => l.Name).Except(Everywhere.Select(r => r.Name)));
    }

    [Fact]
    public void A_name_that_went_is_never_used_again() =>
        Assert.Empty(Lines.Where(l => l.GoneIn is not null).Select(l => l.Name).Intersect(Everywhere.Select(r => r.Name)));

    [Fact]
    public void The_list_of_names_is_in_order_and_names_each_once() =>
        Assert.Equal(Lines.Select(l => l.Name).Distinct().Order(StringComparer.Ordinal), Lines.Select(l => l.Name));

    private static void HasExamples(string page, string name)
    {
        Assert.True(House.Exists(page), $"{page} is missing");
        var text = House.Read(page);

        Assert.StartsWith($"# {name}\n", text);
        Assert.Contains("## Why it matters\n", text);
        Assert.Matches(Example("Wrong"), text);
        Assert.Matches(Example("Right"), text);
    }

    private static Regex Example(string heading) => new($"^## {heading}\n+(?:[^#`][^\n]*\n+)*```", RegexOptions.Multiline);

    private static string Place(string name, string ending) => $"src/Checking/Rules/{Rules.Single(r => r.Name == name).Topic}/{Pascal(name)}{ending}";

    private static string Pascal(string name) => string.Concat(name.Split('-').Select(w => w[..1].ToUpperInvariant() + w[1..]));

    [GeneratedRegex("^[a-z]+(-[a-z0-9]+)*$")]
    private static partial Regex Kebab();
}
