using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Witnessmark.Compiler;
using Witnessmark.Harness;

namespace Witnessmark.Browser.Tests;

/// <summary>Tags in the browser that prints them: the demo's, and those of a job that needs every kind.</summary>
[Collection("browser")]
public sealed class TagTests(Chromium chromium)
{
    private const string Case = "strip-down";

    public static TheoryData<string> Prints =>
        ["sheets/wb-40--tags-a4.html", "sheets/wb-40--tags-letter.html", Case + "/sheets/wb-91--tags-a4.html", Case + "/sheets/wb-91--tags-letter.html"];

    [Theory]
    [MemberData(nameof(Prints))]
    public async Task Every_tag_lies_whole_on_one_leaf_and_holds_its_words(string path)
    {
        var page = await Open(path, 900);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        var over = await page.EvaluateAsync<string[]>(
            """
            (() => [...document.querySelectorAll('.cut')].flatMap(cut => {
              const frame = cut.getBoundingClientRect();
              return [...cut.querySelectorAll('h2, p, li, .box, .stub, footer, .tag, .what')]
                .filter(e => { const r = e.getBoundingClientRect(); return r.bottom > frame.bottom + .6 || r.right > frame.right + .6 || r.top < frame.top - .6; })
                .map(e => e.className + ': ' + e.textContent.trim().slice(0, 30));
            }))()
            """);
        Assert.Empty(over);
        var crossed = await page.EvaluateAsync<string[]>(
            """
            (() => [...document.querySelectorAll('.body')].flatMap(body => {
              const parts = [...body.children].filter(c => !c.matches('.hole'));
              return parts.slice(1).filter((p, i) => p.getBoundingClientRect().top < parts[i].getBoundingClientRect().bottom - .6).map(p => p.textContent.trim().slice(0, 30));
            }))()
            """);
        Assert.Empty(crossed);
        var leaves = await page.Locator(".leaf").CountAsync();
        var pdf = await page.PdfAsync(new PagePdfOptions { PreferCSSPageSize = true, PrintBackground = true });
        Assert.Equal(leaves, System.Text.Encoding.Latin1.GetString(pdf).Split("/Type /Page\n").Length - 1);
        if (Chromium.Pictures is { } folder)
            await File.WriteAllBytesAsync(Path.Combine(folder, Path.GetFileNameWithoutExtension(path) + ".pdf"), pdf);
        await page.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Prints))]
    public async Task The_word_that_is_read_across_the_machine_is_large(string path)
    {
        var page = await Open(path, 900);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        // 18 pt is 24 px; the least of each tag's largest words
        var largest = await page.EvaluateAsync<double[]>(
            "[...document.querySelectorAll('.cut')].map(c => Math.max(...[...c.querySelectorAll('h2, h2 *')].filter(e => getComputedStyle(e).fontWeight >= 700).map(e => parseFloat(getComputedStyle(e).fontSize))))");
        Assert.All(largest, l => Assert.True(l >= 24, $"{l * .75} pt"));
        await page.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Prints))]
    public async Task Nothing_leaves_them_and_a_screen_reader_finds_no_fault(string path)
    {
        var page = await Open(path, 900, bypass: true);
        var result = await page.RunAxe();
        Assert.NotEmpty(result.Passes);
        Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")));
        await page.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Prints))]
    public async Task A_phone_shows_them_without_scrolling_sideways(string path)
    {
        var page = await Open(path, 390);
        Assert.Equal(390, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        await page.CloseAsync();
    }

    private async Task<IPage> Open(string path, int width, bool bypass = false)
    {
        Build();
        var page = await chromium.Browser.NewPageAsync(new BrowserNewPageOptions { BypassCSP = bypass, ViewportSize = new ViewportSize { Width = width, Height = 900 } });
        var asked = new List<string>();
        page.Request += (_, request) => asked.Add(request.Url);
        await page.GotoAsync(chromium.Url(path));
        Assert.Single(asked);
        return page;
    }

    private void Build()
    {
        if (Directory.Exists(Path.Combine(chromium.Site, Case)))
            return;
        foreach (var file in Pipeline.Build(Pipeline.Check(Repo.Files(Repo.Path("tests", "Rendering.Tests", "Cases", "strip-down"))), "0.0.0").Where(f => f.Path.StartsWith("sheets/", StringComparison.Ordinal)))
        {
            var to = Path.Combine(chromium.Site, Case, file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.WriteAllBytes(to, file.Bytes.ToArray());
        }
    }
}
