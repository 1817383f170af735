using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using UglyToad.PdfPig;
using Witnessmark.Compiler;
using Witnessmark.Harness;

namespace Witnessmark.Browser.Tests;

/// <summary>The kit on paper: nobody can take a page of it for one to work from.</summary>
[Collection("browser")]
public sealed class TrialKitTests(Chromium chromium)
{
    public static TheoryData<string> Prints => ["sheet-a4", "sheet-letter", "index", "form", "key", "sheet-es-a4", "sheet-es-letter", "index-es", "form-es", "key-es"];

    public static TheoryData<string, string> OnePageEach
    {
        get
        {
            var pages = new TheoryData<string, string>();
            foreach (var name in new[] { "form", "key", "form-es", "key-es" })
                foreach (var paper in new[] { "A4", "Letter" })
                    pages.Add(name, paper);
            return pages;
        }
    }

    [Theory]
    [MemberData(nameof(Prints))]
    public async Task Every_printed_page_says_that_it_is_not_for_work(string name)
    {
        var page = await Open(name, 900);
        var pdf = await page.PdfAsync(new PagePdfOptions { PreferCSSPageSize = true, PrintBackground = true });
        await page.CloseAsync();
        if (Chromium.Pictures is { } folder)
            await File.WriteAllBytesAsync(Path.Combine(folder, $"trial-{name}.pdf"), pdf);
        using var printed = PdfDocument.Open(pdf);
        Assert.All(printed.GetPages(), p => Assert.Contains(name.Contains("-es", StringComparison.Ordinal) ? "PRUEBA:NOESPARATRABAJAR" : "TRIAL:NOTFORWORK", p.Text.Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal));
        // large: 20 pt and more
        Assert.All(printed.GetPages(), p => Assert.Contains(p.Letters, l => l.Value == "R" && l.PointSize >= 19.5));
    }

    [Theory]
    [MemberData(nameof(OnePageEach))]
    public async Task The_form_and_the_key_are_one_page_each(string name, string paper)
    {
        var page = await Open(name, 900);
        var pdf = await page.PdfAsync(new PagePdfOptions { Format = paper });
        await page.CloseAsync();
        if (Chromium.Pictures is { } folder)
            await File.WriteAllBytesAsync(Path.Combine(folder, $"trial-{name}-{paper}.pdf"), pdf);
        using var printed = PdfDocument.Open(pdf);
        Assert.True(printed.NumberOfPages == 1, $"{name} has {printed.NumberOfPages} pages on {paper}");
    }

    [Fact]
    public async Task The_pages_of_one_section_come_from_another_copy()
    {
        var page = await Open("sheet-a4", 900);
        using var printed = PdfDocument.Open(await page.PdfAsync(new PagePdfOptions { PreferCSSPageSize = true, PrintBackground = true }));
        await page.CloseAsync();
        var copies = printed.GetPages().Select(p => System.Text.RegularExpressions.Regex.Match(p.Text, @"copy ?(\w{3})").Groups[1].Value).ToList();
        Assert.Equal(2, copies.Distinct().Count());
        Assert.Equal(copies[0], copies[^1]);
    }

    [Theory]
    [MemberData(nameof(Prints))]
    public async Task A_screen_reader_finds_no_fault_in_it(string name)
    {
        var page = await Open(name, 900, bypass: true);
        var result = await page.RunAxe();
        Assert.NotEmpty(result.Passes);
        Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")));
        await page.CloseAsync();
    }

    private async Task<IPage> Open(string name, int width, bool bypass = false)
    {
        if (!Directory.Exists(Path.Combine(chromium.Site, "trial-kit")))
            foreach (var file in Pipeline.TrialKit(Pipeline.Check(Repo.Files(Repo.OneBrake)), new TrialOrder("WB-40")).Files)
            {
                Directory.CreateDirectory(Path.Combine(chromium.Site, "trial-kit"));
                await File.WriteAllBytesAsync(Path.Combine(chromium.Site, file.Path), file.Bytes.ToArray());
            }
        var page = await chromium.Browser.NewPageAsync(new BrowserNewPageOptions { BypassCSP = bypass, ViewportSize = new ViewportSize { Width = width, Height = 900 } });
        await page.GotoAsync(chromium.Url($"trial-kit/{name}.html"));
        return page;
    }
}
