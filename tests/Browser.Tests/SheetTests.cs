using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>The sheet in the browser that prints it. Sizes are measured, not read from the style sheet.</summary>
[Collection("browser")]
public sealed class SheetTests(Chromium chromium)
{
    private const double MillimetresPerPixel = 25.4 / 96;

    public static TheoryData<string, string> Papers => new() { { "sheets/wb-40-a4.html", "A4" }, { "sheets/wb-40-letter.html", "Letter" } };

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task It_prints_on_its_paper(string path, string paper)
    {
        var page = await chromium.Open(path, 900);
        var pdf = await page.PdfAsync(new PagePdfOptions { PreferCSSPageSize = true, PrintBackground = true });
        var text = System.Text.Encoding.Latin1.GetString(pdf);
        Assert.Contains(paper == "A4" ? "/MediaBox [0 0 594.95996 841.91998]" : "/MediaBox [0 0 612 792]", text, StringComparison.Ordinal);
        if (Chromium.Pictures is { } folder)
            await File.WriteAllBytesAsync(Path.Combine(folder, $"sheet-{paper.ToLowerInvariant()}.pdf"), pdf);
        await page.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task Nothing_leaves_it_and_a_screen_reader_finds_no_fault(string path, string paper)
    {
        var page = await chromium.Browser.NewPageAsync(new BrowserNewPageOptions { BypassCSP = true });
        var asked = new List<string>();
        page.Request += (_, request) => asked.Add(request.Url);
        await page.GotoAsync(chromium.Url(path));
        Assert.True(asked.Count == 1, paper + " asks for " + string.Join(" ", asked));
        var result = await page.RunAxe();
        Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")));
        await page.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task A_phone_shows_it_without_scrolling_sideways(string path, string paper)
    {
        var page = await chromium.Open(path, 390);
        var width = await page.EvaluateAsync<int>("document.documentElement.scrollWidth");
        if (Chromium.Pictures is { } folder)
            await page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(folder, $"sheet-{paper.ToLowerInvariant()}-phone.png"), FullPage = true });
        Assert.Equal(390, width);
        await page.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task Boxes_take_a_gloved_hand_and_words_an_arms_length(string path, string paper)
    {
        var page = await chromium.Open(path, 900);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        var boxes = await page.EvaluateAsync<double[]>("[...document.querySelectorAll('.box')].map(b => b.getBoundingClientRect().height)");
        Assert.True(boxes.Length > 100, $"{paper}: only {boxes.Length} boxes");
        Assert.All(boxes, b => Assert.True(b * MillimetresPerPixel >= 8, $"{paper}: a box is {b * MillimetresPerPixel:0.0} mm high"));
        var small = await page.EvaluateAsync<string[]>(
            """
            (() => {
              const found = [];
              const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
              while (walk.nextNode()) {
                const parent = walk.currentNode.parentElement, text = walk.currentNode.textContent.trim();
                if (!text || parent.closest('svg, style, title, .screen-only, .read-only')) continue;
                const style = getComputedStyle(parent);
                if (style.display !== 'none' && parent.getClientRects().length && parseFloat(style.fontSize) * .75 < 10.9)
                  found.push(parseFloat(style.fontSize) * .75 + 'pt: ' + text.slice(0, 40));
              }
              return found;
            })()
            """);
        Assert.Empty(small);
        await page.CloseAsync();
    }
}
