using System.Collections.Immutable;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Records.Receiving;
using Witnessmark.Rendering.Messages;

namespace Witnessmark.Records.Tests;

/// <summary>Typed sign-offs in <c>Cases</c>: the first line says what becomes of each, the approved text what the mechanic reads.</summary>
public sealed class Receptions
{
    private const string Folder = "Records.Tests/Cases";
    private const string Expect = "# expect: ";

    /// <summary>A version that was printed before the one in the demo; its hash is made up and stands in a case.</summary>
    private static readonly ImmutableArray<ReleasedHash> Released = [new("WB-40", "2.0.0", "200020002000" + new string('0', 52))];

    public static TheoryData<string> Cases =>
        [.. Directory.EnumerateFiles(Repo.Path("tests", "Records.Tests", "Cases"), "*.yaml").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_sign_off_becomes_what_its_first_line_says(string name)
    {
        var content = Repo.Read("tests", "Records.Tests", "Cases", name + ".yaml");
        var result = Reception.Hold(Demo.Read($"records/{name}.yaml", content), Demo.Library, Released);
        var became = result.Findings.Select(f => f.Rule.Name).Distinct().Order(StringComparer.Ordinal).Prepend(result.State.ToString().ToLowerInvariant());
        Assert.Equal(content.Split('\n')[0][Expect.Length..], string.Join(' ', became));
        Approved.Check($"{Folder}/{name}.approved.txt", Seen(result));
    }

    [Fact]
    public void Every_case_that_is_refused_has_one_reason_only()
    {
        foreach (var name in Cases.Select(c => c.Data).Where(n => n.StartsWith("refused", StringComparison.Ordinal)))
            Assert.Equal(2, Repo.Read("tests", "Records.Tests", "Cases", name + ".yaml").Split('\n')[0][Expect.Length..].Split(' ').Length);
    }

    [Fact]
    public void NO_is_a_mechanic_and_not_a_no()
    {
        var library = Demo.With("workshop.yaml", "  MO: {role: mechanic, mark-signs: M}", "  NO: {role: mechanic}");
        var content = Complete.Replace("MO", "NO", StringComparison.Ordinal);
        // the list of people is no part of the hash
        var result = Reception.Hold(Demo.Read("records/no.yaml", content), library, []);
        Assert.Equal(ReceptionState.Complete, result.State);
    }

    [Fact]
    public void A_reason_names_the_place_where_it_is_written()
    {
        var signOff = Demo.Read("records/x.yaml", Complete.Replace("D4: 5.01 5.02 5.01 mm", "D4: 5.01 4.88 5.01 mm", StringComparison.Ordinal));
        var finding = Assert.Single(Reception.Hold(signOff, Demo.Library, []).Findings);
        Assert.Equal("5.01 4.88 5.01 mm", finding.At.Text);
    }

    [Fact]
    public void One_fault_among_any_number_of_good_entries_refuses() =>
        Assert.Equal(ReceptionState.Refused, ReceptionResult.StateOf(
            [Finding(Severity.Remark), Finding(Severity.Query), Finding(Severity.Fault), Finding(Severity.Remark)]));

    [Fact]
    public void A_question_keeps_it_open_and_a_remark_does_not()
    {
        Assert.Equal(ReceptionState.Open, ReceptionResult.StateOf([Finding(Severity.Remark), Finding(Severity.Query)]));
        Assert.Equal(ReceptionState.Complete, ReceptionResult.StateOf([Finding(Severity.Remark)]));
        Assert.Equal(ReceptionState.Complete, ReceptionResult.StateOf([]));
    }

    internal static string Complete { get; } = Repo.Read("tests", "Records.Tests", "Cases", "complete-natural-scatter.yaml");

    private static Finding Finding(Severity severity) =>
        new(new RuleInfo("some-reason", "Sign-off", severity), new Language.Text.SourceText("x", "").At(0, 0), "Found.", "Why.", "Put right.");

    private static string Seen(ReceptionResult result)
    {
        // the day's hash and mark are not approved text
        var text = string.Concat(result.Findings.Select(new FindingText("", Ink.None).Long)).Replace(Demo.Hash.Short12, "{hash}", StringComparison.Ordinal)
            .Replace(Demo.Words(Demo.Library).ToString(), "{words}", StringComparison.Ordinal);
        return text + ReceptionText.Verdict(result) + "\n";
    }
}
