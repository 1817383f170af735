using System.Diagnostics;
using Microsoft.Playwright;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Press;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Benchmarks;

/// <summary>
/// `print` of the demo beside what Chromium alone takes for the same pages, in alternating rounds. Counted: from HTML in memory to
/// finished PDFs in memory, browsers started and warm, on both sides as many pages at a time as the press has beds. Chromium alone
/// goes to each file and makes the PDF with the same settings, without codes and without settled dates. Not counted on either
/// side: reading, planning, starting.
/// </summary>
internal static class PressTime
{
    private const int Rounds = 9;
    private const int WarmUp = 2;

    public static async Task Run()
    {
        var sheets = Pipeline.Specimens(Pipeline.Check(Repo.Files(Repo.OneBrake)), new PrintOrder(null, null, null)).Sheets.Select(s => s.Sheet).ToList();
        var folder = Directory.CreateTempSubdirectory("witnessmark-press-");
        var files = sheets.Select((s, i) => Path.Combine(folder.FullName, $"{i}.html")).ToList();
        foreach (var (file, sheet) in files.Zip(sheets))
            await File.WriteAllTextAsync(file, sheet.Html);
        var executable = BrowserFinder.OfThisMachine.Find();
        await using var press = await PrintingPress.Start(executable);
        using var driver = await Playwright.CreateAsync();
        await using var browser = await driver.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = executable, Args = ["--disable-gpu"] });
        await Measure(press, browser, sheets, files);
        folder.Delete(recursive: true);
    }

    private static async Task Measure(PrintingPress press, IBrowser browser, List<PressSheet> sheets, List<string> files)
    {
        var ratios = new List<double>();
        for (var round = 0; round < Rounds; round++)
        {
            var alone = await Time(() => Alone(browser, files));
            var pages = 0;
            var pressed = await Time(async () => pages = (await press.Print(sheets)).Sum(p => p.Pages));
            Console.WriteLine($"round {round}: Chromium alone {alone:0} ms, press {pressed:0} ms for {sheets.Count} files of {pages} pages");
            if (round >= WarmUp)
                ratios.Add(pressed / alone);
        }
        ratios.Sort();
        Console.WriteLine($"press / Chromium alone: median {ratios[ratios.Count / 2]:0.00}, least {ratios[0]:0.00}, most {ratios[^1]:0.00}");
    }

    private static Task Alone(IBrowser browser, List<string> files)
    {
        var next = -1;
        return Task.WhenAll(Enumerable.Range(0, Math.Clamp(Environment.ProcessorCount, 1, 4)).Select(async _ =>
        {
            var page = await browser.NewPageAsync();
            for (var i = Interlocked.Increment(ref next); i < files.Count; i = Interlocked.Increment(ref next))
            {
                await page.GotoAsync(new Uri(files[i]).AbsoluteUri);
                await page.PdfAsync(new PagePdfOptions { PreferCSSPageSize = true, PrintBackground = true, Tagged = true, Outline = true });
            }
            await page.CloseAsync();
        }));
    }

    private static async Task<double> Time(Func<Task> action)
    {
        var watch = Stopwatch.StartNew();
        await action();
        return watch.Elapsed.TotalMilliseconds;
    }
}
