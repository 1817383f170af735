using System.Collections.Concurrent;
using Microsoft.Playwright;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press;

/// <summary>
/// HTML to PDF through a browser without a window: many sheets through one, a few at a time. Nothing leaves a page, and no
/// script runs in it.
/// </summary>
public sealed class PrintingPress : IAsyncDisposable
{
    private const int MostBeds = 4;

    // what a browser does on its own behalf is no business of a print
    private static readonly string[] Quiet =
        ["--disable-gpu", "--disable-quic", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run", "--host-resolver-rules=MAP * ~NOTFOUND"];

    private static readonly PagePdfOptions Paper = new()
    {
        PreferCSSPageSize = true,
        PrintBackground = true,
        DisplayHeaderFooter = false,
        Tagged = true,
        Outline = true,
    };

    private readonly IPlaywright _driver;
    private readonly IBrowser _browser;
    private readonly IBrowserContext _context;

    private PrintingPress(IPlaywright driver, IBrowser browser, IBrowserContext context) => (_driver, _browser, _context) = (driver, browser, context);

    /// <param name="executable">From <see cref="BrowserFinder"/>.</param>
    /// <exception cref="PressException">The browser does not start.</exception>
    public static async Task<PrintingPress> Start(string executable)
    {
        var driver = await Playwright.CreateAsync();
        try
        {
            var browser = await Launch(driver, executable);
            var context = await browser.NewContextAsync(new BrowserNewContextOptions
            {
                Offline = true,
                JavaScriptEnabled = false,
                ServiceWorkers = ServiceWorkerPolicy.Block,
                AcceptDownloads = false,
            });
            await context.RouteAsync("**/*", route => route.AbortAsync());
            return new PrintingPress(driver, browser, context);
        }
        catch (PlaywrightException e)
        {
            driver.Dispose();
            throw new PressException($"{executable} does not start: {FirstLine(e)}.", $"Try it by hand, or name another Chromium, Chrome or Edge in {BrowserFinder.Variable}.");
        }
    }

    /// <summary>Prints all sheets; the order of the answers is the order of the sheets.</summary>
    /// <param name="printed">Told after each sheet how many are done.</param>
    /// <exception cref="PressException">The browser stopped on the way.</exception>
    public async Task<IReadOnlyList<PrintedSheet>> Print(IReadOnlyList<PressSheet> sheets, Action<int>? printed = null)
    {
        var answers = new PrintedSheet[sheets.Count];
        var waiting = new ConcurrentQueue<int>(Enumerable.Range(0, sheets.Count));
        var done = 0;
        try
        {
            await Task.WhenAll(Enumerable.Range(0, Math.Min(Beds, sheets.Count)).Select(_ => Bed(waiting, async (bed, i) =>
            {
                answers[i] = await Print(bed, sheets[i]);
                printed?.Invoke(Interlocked.Increment(ref done));
            })));
        }
        catch (PlaywrightException e)
        {
            throw new PressException($"The browser stopped printing: {FirstLine(e)}.", "Print again; name one procedure when it happens again.");
        }
        return answers;
    }

    /// <summary>One page of the browser that takes sheet after sheet.</summary>
    private async Task Bed(ConcurrentQueue<int> waiting, Func<IPage, int, Task> print)
    {
        var bed = await _context.NewPageAsync();
        while (waiting.TryDequeue(out var i))
            await print(bed, i);
        await bed.CloseAsync();
    }

    private static async Task<PrintedSheet> Print(IPage bed, PressSheet sheet)
    {
        // each sheet lets only its own style in, and that holds until the page goes elsewhere
        await bed.GotoAsync("about:blank");
        await bed.SetContentAsync(sheet.Html);
        var pdf = await bed.PdfAsync(Paper);
        return await Task.Run(() => Finishing.Of(pdf, sheet));
    }

    public async ValueTask DisposeAsync()
    {
        await _context.DisposeAsync();
        await _browser.DisposeAsync();
        _driver.Dispose();
    }

    private static int Beds => Math.Clamp(Environment.ProcessorCount, 1, MostBeds);

    /// <summary>In its sandbox; a container or the root user has none to give, and the sheet is ours and runs no script.</summary>
    private static async Task<IBrowser> Launch(IPlaywright driver, string executable)
    {
        try
        {
            return await driver.Chromium.LaunchAsync(Options(executable, sandbox: true));
        }
        catch (PlaywrightException)
        {
            return await driver.Chromium.LaunchAsync(Options(executable, sandbox: false));
        }
    }

    private static BrowserTypeLaunchOptions Options(string executable, bool sandbox) =>
        new() { ExecutablePath = executable, ChromiumSandbox = sandbox && !Environment.IsPrivilegedProcess, Args = Quiet };

    private static string FirstLine(PlaywrightException e) => e.Message.Split('\n')[0].Trim().TrimEnd('.');
}
