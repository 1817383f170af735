using System.Text.RegularExpressions;
using Witnessmark.Harness;

namespace Witnessmark.House.Tests;

/// <summary>What the front page and the page for developers name is there.</summary>
public sealed partial class FrontPageTests
{
    public static TheoryData<string> Pages => ["README.md", "DEVELOPERS.md", .. House.Files("src/Decisions", ".md")];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_path_that_is_named_exists(string page) =>
        Assert.Empty(Missing(House.Read(page)));

    [Fact]
    public void The_measure_sees_a_path_that_leads_nowhere() =>
        Assert.Equal(["src/Nowhere", "tests/none.txt"], Missing("See `src/Nowhere/<Fault>.md`, [it](tests/none.txt), `src/Language` and `tests/Cli.Tests/Sessions/*.session.txt`."));

    [Fact]
    public void The_front_page_tells_every_command_and_no_other()
    {
        var commands = House.Files("src/Cli/Commands", "Command.cs").Select(f => Path.GetFileName(f)[..^"Command.cs".Length].ToLowerInvariant());

        Assert.Equal(commands, Row().Matches(House.Read("README.md")).Select(m => m.Groups[1].Value).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_decision_is_on_the_page_for_developers() =>
        Assert.Empty(House.Files("src/Decisions", ".md").Where(d => !House.Read("DEVELOPERS.md").Contains($"({d})", StringComparison.Ordinal)));

    [Fact]
    public void Every_unit_of_the_house_is_in_the_table_of_rooms() =>
        Assert.Empty(House.Files("src", ".csproj").Select(p => Path.GetDirectoryName(p)!.Replace('\\', '/')).Where(r => !House.Read("DEVELOPERS.md").Contains($"| `{r}` |", StringComparison.Ordinal)));

    private static IEnumerable<string> Missing(string text) =>
        InHouse().Matches(text).Select(m => m.Value.TrimEnd('.')).Distinct().Where(p => !Path.Exists(Repo.Path(p.Split('/'))));

    /// <summary>A path from one of the folders at the top; what stands in angle brackets or is a pattern ends it.</summary>
    [GeneratedRegex(@"(?<![\w./-])(?:src|tests|site|templates|procedures|\.github|\.ci)/[\w.-]+(?:/[\w.-]+)*(?![\w*])")]
    private static partial Regex InHouse();

    [GeneratedRegex(@"(?m)^\| `witnessmark (\w+)")]
    private static partial Regex Row();
}
