using System.Text;
using Witnessmark.Compiler;
using Witnessmark.Harness;

namespace Witnessmark.Rendering.Tests;

public sealed class SitePagesTests
{
    private static readonly Lazy<Dictionary<string, string>> Built = new(() => Pipeline
        .Build(Pipeline.Check(Repo.Files(Repo.OneBrake)), "0.0.0", Repo.Records(Repo.OneBrake))
        .ToDictionary(f => f.Path, f => Encoding.UTF8.GetString(f.Bytes.Span)));

    public static TheoryData<string> Read => ["index.html", "procedures/wb-40.html", "procedures/wb-60.html", "machines/okr-34.html"];

    [Theory]
    [MemberData(nameof(Read))]
    public void A_page_of_the_demo_is_what_was_approved(string path) =>
        Approved.Check($"Rendering.Tests/Approved/site-{path.Replace('/', '-')}", Built.Value[path]);

    [Fact]
    public void Every_page_says_what_stands_above_it()
    {
        var pages = Built.Value.Where(p => p.Key.EndsWith(".html", StringComparison.Ordinal)).ToList();
        Assert.True(pages.Count > 100);
        foreach (var (path, html) in pages)
            foreach (var authority in html.Contains("<html lang=\"es\"", StringComparison.Ordinal) ? ["fabricante", "sitio", "ley local", "profesional autorizado"] : new[] { "maker", "site", "law", "licensed practice" })
                Assert.True(html.Contains(authority, StringComparison.OrdinalIgnoreCase), $"{path} says nothing of {authority}");
    }

    [Fact]
    public void Every_page_refuses_scripts_and_strangers()
    {
        foreach (var (path, html) in Built.Value.Where(p => p.Key.EndsWith(".html", StringComparison.Ordinal)))
        {
            Assert.True(html.Contains("Content-Security-Policy\" content=\"default-src &#39;none&#39;", StringComparison.Ordinal) || html.Contains("Content-Security-Policy\" content=\"default-src 'none'", StringComparison.Ordinal), path);
            Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void Every_rule_has_its_page_with_a_first_sentence()
    {
        Assert.Equal(Catalog.Rules.Length, Catalog.Rules.Select(r => r.Name).Distinct().Count());
        foreach (var rule in Catalog.Rules)
        {
            Assert.True(Catalog.Summary(rule.Name).Length > 12, rule.Name);
            Assert.Contains($"rules/{rule.Name}.html", Built.Value.Keys);
        }
    }

    [Fact]
    public void Building_twice_gives_the_same_bytes()
    {
        var again = Pipeline.Build(Pipeline.Check(Repo.Files(Repo.OneBrake)), "0.0.0", Repo.Records(Repo.OneBrake));
        Assert.Equal(Built.Value.Count, again.Length);
        Assert.All(again, f => Assert.Equal(Built.Value[f.Path], Encoding.UTF8.GetString(f.Bytes.Span)));
    }
}
