using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Witnessmark.House.Tests;

/// <summary>The core does no IO, knows no clock and no chance. The build refuses the calls; these hold the build to it.</summary>
public sealed class CoreTests
{
    private static readonly string[] NotInTheCore =
        ["System.IO", "System.Net", "System.Diagnostics", "System.Threading", "System.Reflection", "System.Runtime.InteropServices"];

    /// <summary>Read pages, templates and styles that were built into the program.</summary>
    private static readonly string[] ReadsItself = ["src/Compiler/Catalog.cs", "src/Rendering/Html/Resources.cs"];

    private static readonly string[] Banned =
    [
        "T:System.IO.File", "T:System.IO.Directory", "T:System.IO.FileStream", "T:System.Console", "T:System.Environment",
        "T:System.Diagnostics.Process", "T:System.Net.Http.HttpClient", "P:System.DateTime.Now", "P:System.DateTime.UtcNow",
        "P:System.DateTimeOffset.Now", "P:System.DateTimeOffset.UtcNow", "T:System.TimeProvider", "T:System.Random", "M:System.Guid.NewGuid",
        "P:System.Globalization.CultureInfo.CurrentCulture",
    ];

    [Fact]
    public void The_core_uses_no_disk_no_net_no_clock() =>
        Assert.Equal(ReadsItself, House.CoreSources.Where(f => Code.Usings(f).Any(u => NotInTheCore.Any(n => u == n || u.StartsWith(n + ".", StringComparison.Ordinal)))));

    [Fact]
    public void The_build_still_refuses_disk_net_clock_and_chance()
    {
        var refused = House.Read("src/BannedSymbols.txt").Split('\n').Select(l => l.Split(';')[0]);

        Assert.Empty(Banned.Except(refused));
    }

    [Fact]
    public void Nobody_turns_a_warning_off_in_the_source() =>
        Assert.Empty(House.Files("src", ".cs").Where(f => Code.Directives(f).Any(d => d.IsKind(SyntaxKind.PragmaWarningDirectiveTrivia))));

    [Fact]
    public void Every_project_of_the_core_has_the_banned_calls_checked()
    {
        foreach (var project in House.Files("src", ".csproj").Where(House.IsCore))
            Assert.Contains("BannedApiAnalyzers", House.Read($"{Path.GetDirectoryName(project)!.Replace('\\', '/')}/packages.lock.json"), StringComparison.Ordinal);
    }

    [Fact]
    public void There_are_no_regions() =>
        Assert.Empty(House.Files("src", ".cs").Concat(House.Files("tests", ".cs")).Where(f => Code.Directives(f).Any(d => d.IsKind(SyntaxKind.RegionDirectiveTrivia))));
}
