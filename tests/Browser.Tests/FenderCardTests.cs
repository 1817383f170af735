using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>The fender card in the browser that prints it.</summary>
[Collection("browser")]
public sealed class FenderCardTests(Chromium chromium)
{
    public static TheoryData<string> Papers => ["sheets/wb-40--card-a4.html", "sheets/wb-40--card-letter.html", "sheets/wb-40--card-es-a4.html", "sheets/wb-40--card-es-letter.html"];

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task It_is_one_page(string path)
    {
        var page = await chromium.Open(path, 900);
        var pdf = await page.PdfAsync(new PagePdfOptions { PreferCSSPageSize = true, PrintBackground = true });
        if (Chromium.Pictures is { } folder)
            await File.WriteAllBytesAsync(Path.Combine(folder, Path.GetFileNameWithoutExtension(path) + ".pdf"), pdf);
        Assert.Equal(1, System.Text.Encoding.Latin1.GetString(pdf).Split("/Type /Page\n").Length - 1);
        await page.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task Its_numbers_are_read_from_the_work(string path)
    {
        var page = await chromium.Open(path, 900);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        // 18 pt is 24 px
        var sizes = await page.EvaluateAsync<double[]>("[...document.querySelectorAll('.number, .native')].filter(e => getComputedStyle(e).fontWeight >= 700).map(e => parseFloat(getComputedStyle(e).fontSize))");
        Assert.True(sizes.Length > 15);
        Assert.All(sizes, s => Assert.True(s >= 24, $"{s * .75} pt"));
        await page.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task A_screen_reader_finds_no_fault_and_a_phone_does_not_scroll_sideways(string path)
    {
        var page = await chromium.Browser.NewPageAsync(new BrowserNewPageOptions { BypassCSP = true, ViewportSize = new ViewportSize { Width = 390, Height = 900 } });
        await page.GotoAsync(chromium.Url(path));
        Assert.Equal(390, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        var result = await page.RunAxe();
        Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")));
        await page.CloseAsync();
    }
}
