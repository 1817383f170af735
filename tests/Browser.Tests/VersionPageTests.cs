using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Witnessmark.Harness;

namespace Witnessmark.Browser.Tests;

/// <summary>The page of three versions that was approved, with digits where it has names for them.</summary>
[Collection("browser")]
public sealed class VersionPageTests(Chromium chromium)
{
    [Theory]
    [InlineData(360)]
    [InlineData(390)]
    public async Task A_phone_shows_three_versions_their_copies_and_changes_without_scrolling_sideways(int width)
    {
        var page = await chromium.Open(Written(), width);
        Assert.Equal(width, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        Assert.Equal(3, await page.EvaluateAsync<int>("document.querySelectorAll('.all-digits').length"));
        await page.CloseAsync();
    }

    [Fact]
    public async Task A_screen_reader_finds_no_fault_in_it()
    {
        foreach (var scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
        {
            var page = await chromium.Browser.NewPageAsync(new BrowserNewPageOptions { ColorScheme = scheme, BypassCSP = true });
            await page.GotoAsync(chromium.Url(Written()));
            var result = await page.RunAxe();
            Assert.NotEmpty(result.Passes);
            Assert.True(result.Violations.Length == 0, scheme + ": " + string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")));
            await page.CloseAsync();
        }
    }

    [Fact]
    public async Task A_click_takes_all_64_digits_and_paper_has_no_way_round()
    {
        var page = await chromium.Open(Written(), 1280);
        await page.ClickAsync(".all-digits");
        Assert.Equal(64, await page.EvaluateAsync<int>("getSelection().toString().trim().length"));
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        Assert.False(await page.IsVisibleAsync("nav"));
        Assert.Equal("page", await page.EvaluateAsync<string>("getComputedStyle([...document.querySelectorAll('.version')].at(-1)).breakBefore"));
        await page.CloseAsync();
    }

    private string Written()
    {
        const string path = "versions/three.html";
        var text = Repo.Read("tests", "Rendering.Tests", "Approved", "site-versions-wb-40.html");
        foreach (var (version, digit) in new[] { ("2.1.0", '1'), ("2.2.0", 'd'), ("2.3.0", '8') })
            text = text.Replace($"{{hash of {version}}}", new string(digit, 64), StringComparison.Ordinal).Replace($"{{short {version}}}", string.Join(' ', Enumerable.Repeat(new string(char.ToUpperInvariant(digit), 4), 3)), StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(chromium.Site, path), text);
        return path;
    }
}
