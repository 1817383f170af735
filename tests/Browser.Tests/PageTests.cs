using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

[Collection("browser")]
public sealed class PageTests(Chromium chromium)
{
    /// <summary>One of each kind; the rule pages are alike.</summary>
    public static TheoryData<string> Kinds => ["index.html", "procedures/wb-40.html", "procedures/wb-60.html", "versions/wb-40.html", "versions/wb-60.html", "machines/okr-34.html", "rules/index.html", "rules/torque-unit-slip.html", "language.html", "reference.html", "glossary.html", "first-sheet.html"];

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Nothing_leaves_the_page_and_nothing_fails_in_it(string path)
    {
        var page = await chromium.Browser.NewPageAsync();
        var asked = new List<string>();
        var said = new List<string>();
        page.Request += (_, request) => asked.Add(request.Url);
        page.Console += (_, message) => said.Add(message.Text);
        await page.GotoAsync(chromium.Url(path));
        Assert.Empty(said);
        Assert.NotEmpty(asked);
        Assert.All(asked, url => Assert.True(url.StartsWith("file:", StringComparison.Ordinal) || url.StartsWith("data:", StringComparison.Ordinal), url));
        await page.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_phone_shows_it_without_scrolling_sideways(string path)
    {
        var page = await chromium.Open(path, 390);
        Assert.Equal(390, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        await Picture(page, path, "phone");
        await page.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_screen_reader_finds_no_fault_in_it(string path)
    {
        foreach (var scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
        {
            var page = await chromium.Browser.NewPageAsync(new BrowserNewPageOptions { ColorScheme = scheme, BypassCSP = true });
            await page.GotoAsync(chromium.Url(path));
            var result = await page.RunAxe();
            Assert.NotEmpty(result.Passes);
            Assert.True(result.Violations.Length == 0, scheme + ": " + string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")));
            await page.CloseAsync();
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task The_first_key_leads_to_the_text(string path)
    {
        var page = await chromium.Open(path, 1280);
        await page.Keyboard.PressAsync("Tab");
        Assert.Equal("#main", await page.EvaluateAsync<string>("document.activeElement.getAttribute('href')"));
        await Picture(page, path, "desk");
        await page.CloseAsync();
    }

    [Fact]
    public async Task Every_link_leads_somewhere()
    {
        var page = await chromium.Browser.NewPageAsync();
        var followed = 0;
        foreach (var path in chromium.Pages.Where(p => !p.StartsWith("rules/", StringComparison.Ordinal) || p == "rules/index.html"))
        {
            await page.GotoAsync(chromium.Url(path));
            foreach (var target in await page.EvaluateAsync<string[]>("[...document.querySelectorAll('a[href]')].map(a => a.href)"))
            {
                var file = new Uri(target);
                Assert.True(!file.IsFile || File.Exists(file.LocalPath), $"{path} leads to {target}");
                followed++;
            }
        }
        Assert.True(followed > 100, $"only {followed} links");
        await page.CloseAsync();
    }

    private static async Task Picture(IPage page, string path, string width)
    {
        if (Chromium.Pictures is { } folder)
            await page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(folder, $"{path.Replace('/', '-')}-{width}.png"), FullPage = true });
    }
}
