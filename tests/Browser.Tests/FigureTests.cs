using System.Text;
using Microsoft.Playwright;
using Witnessmark.Harness;

namespace Witnessmark.Browser.Tests;

/// <summary>All drawings on one page, measured with the type that prints.</summary>
[Collection("browser")]
public sealed class FigureTests(Chromium chromium)
{
    private static readonly IReadOnlyList<string> Names =
        [.. Directory.EnumerateFiles(Repo.Path("tests", "Rendering.Tests", "Figures", "Approved"), "*.svg").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    [Fact]
    public async Task Words_stay_on_the_paper_and_clear_of_each_other()
    {
        var page = await Open();
        var boxes = await page.EvaluateAsync<int>("document.querySelectorAll('svg text').length");
        Assert.True(boxes >= 3 * Names.Count, $"only {boxes} texts");
        Assert.Empty(await page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll('svg')].flatMap(svg => {
              const name = svg.querySelector('title').id, view = svg.viewBox.baseVal;
              const texts = [...svg.querySelectorAll('text')].map(t => ({ says: t.textContent, size: parseFloat(t.getAttribute('font-size')), x: parseFloat(t.getAttribute('x')), y: parseFloat(t.getAttribute('y')), up: t.hasAttribute('transform'), box: t.getBBox() }))
                .map(t => t.up
                  ? { says: t.says, left: t.x - .73 * t.size, right: t.x + .21 * t.size, top: t.y - t.box.width, bottom: t.y }
                  : { says: t.says, left: t.box.x, right: t.box.x + t.box.width, top: t.y - .73 * t.size, bottom: t.y + .21 * t.size });
              const out = texts.filter(t => t.left < 0 || t.right > view.width || t.top < 0 || t.bottom > view.height).map(t => `${name}: ${t.says} leaves the paper`);
              const over = texts.flatMap((a, i) => texts.slice(i + 1).filter(b => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom).map(b => `${name}: ${a.says} over ${b.says}`));
              return [...out, ...over];
            })
            """));
        await page.CloseAsync();
    }

    [Fact]
    public async Task A_page_of_all_of_them_prints()
    {
        var page = await Open();
        var pdf = await page.PdfAsync(new PagePdfOptions { Format = "A4", PrintBackground = true });
        Assert.True(pdf.Length > 10_000, $"{pdf.Length} bytes");
        if (Chromium.Pictures is { } folder)
        {
            await File.WriteAllBytesAsync(Path.Combine(folder, "figures.pdf"), pdf);
            await page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(folder, "figures-desk.png"), FullPage = true });
            await page.SetViewportSizeAsync(390, 900);
            await page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(folder, "figures-phone.png"), FullPage = true });
        }
        await page.CloseAsync();
    }

    private async Task<IPage> Open()
    {
        var html = new StringBuilder("<!doctype html><meta charset=utf-8><title>All drawings</title><style>@page{margin:12mm}body{margin:0;font-family:'Liberation Sans',Arial,sans-serif}figure{margin:0 0 8mm;break-inside:avoid}svg{max-width:100%;height:auto}</style>");
        foreach (var name in Names)
            html.Append("<figure><figcaption>").Append(name).Append("</figcaption>").Append(Repo.Read("tests", "Rendering.Tests", "Figures", "Approved", $"{name}.svg")).Append("</figure>");
        var page = await chromium.Browser.NewPageAsync(new BrowserNewPageOptions { ViewportSize = new ViewportSize { Width = 900, Height = 900 } });
        await page.SetContentAsync(html.ToString());
        return page;
    }
}
