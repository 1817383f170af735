using System.Text.Json;

namespace Witnessmark.House.Tests;

/// <summary>Data flows one way: who may know whom, and the one home of each library.</summary>
public sealed class ReferenceTests
{
    private static readonly Dictionary<string, string[]> MayKnow = new()
    {
        ["Language"] = [],
        ["Engineering"] = ["Language"],
        ["Proof"] = ["Language"],
        ["Reading"] = ["Language"],
        ["Checking"] = ["Language", "Engineering", "Proof", "Records", "Comparing"],
        ["Records"] = ["Language", "Engineering", "Proof"],
        ["Comparing"] = ["Language", "Engineering", "Proof", "Records"],
        ["Rendering"] = ["Language", "Engineering", "Proof", "Records", "Comparing"],
        ["Compiler"] = ["Language", "Engineering", "Proof", "Reading", "Checking", "Records", "Comparing", "Rendering"],
        ["Press"] = ["Rendering"],
        ["History"] = ["Language"],
        ["Cli"] = ["Compiler", "Press", "History"],
    };

    private static readonly Dictionary<string, string> Home = new()
    {
        ["Markdig"] = "Reading",
        ["YamlDotNet"] = "Reading",
        ["Scriban.Signed"] = "Rendering",
        ["QRCoder"] = "Rendering",
        ["Microsoft.Playwright"] = "Press",
        ["PDFsharp"] = "Press",
        ["LibGit2Sharp"] = "History",
        ["System.CommandLine"] = "Cli",
    };

    public static TheoryData<string> Projects => [.. MayKnow.Keys];

    [Fact]
    public void Every_project_has_its_place_in_the_flow() =>
        Assert.Equal(MayKnow.Keys.Order(StringComparer.Ordinal), House.Files("src", ".csproj").Select(Name).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_knows_only_what_comes_before_it(string project) =>
        Assert.Empty(House.ProjectReferences($"src/{project}/{project}.csproj").Except(MayKnow[project]));

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_library_has_one_home(string project) =>
        Assert.Empty(House.PackageReferences($"src/{project}/{project}.csproj").Where(p => Home.GetValueOrDefault(p) != project));

    [Fact]
    public void Every_library_is_still_at_home_where_it_is_said_to_be() =>
        Assert.All(Home, h => Assert.Contains(h.Key, House.PackageReferences($"src/{h.Value}/{h.Value}.csproj")));

    /// <summary>A library that comes in through another project could be used without being named.</summary>
    [Theory]
    [InlineData("Markdig", "Reading")]
    [InlineData("YamlDotNet", "Reading")]
    [InlineData("Scriban", "Rendering")]
    [InlineData("QRCoder", "Rendering")]
    [InlineData("Microsoft.Playwright", "Press")]
    [InlineData("PdfSharp", "Press")]
    [InlineData("LibGit2Sharp", "History")]
    [InlineData("System.CommandLine", "Cli")]
    public void A_library_is_used_only_at_home(string space, string home)
    {
        var users = House.Files("src", ".cs")
            .Where(f => Code.Usings(f).Any(u => u == space || u.StartsWith(space + ".", StringComparison.Ordinal)))
            .Select(f => f.Split('/')[1])
            .Distinct();

        Assert.Empty(users.Except([home]));
    }

    [Fact]
    public void Every_project_has_a_lock_file() =>
        Assert.Empty(House.Files("src", ".csproj").Concat(House.Files("tests", ".csproj"))
            .Where(p => !House.Exists($"{Path.GetDirectoryName(p)!.Replace('\\', '/')}/packages.lock.json")));

    [Fact]
    public void The_vocabulary_needs_no_library()
    {
        using var locked = JsonDocument.Parse(House.Read("src/Language/packages.lock.json"));
        var needed = locked.RootElement.GetProperty("dependencies").EnumerateObject().SelectMany(f => f.Value.EnumerateObject()).Select(p => p.Name);

        // an analyzer: it looks on while the house is built and does not go with it
        Assert.Equal(["Microsoft.CodeAnalysis.BannedApiAnalyzers"], needed);
    }

    private static string Name(string projectFile) => Path.GetFileNameWithoutExtension(projectFile);
}
