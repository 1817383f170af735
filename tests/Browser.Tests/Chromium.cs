using Microsoft.Playwright;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Press;

namespace Witnessmark.Browser.Tests;

/// <summary>One real browser and one built demo for all tests: what is tested is what a person opens.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>Folder of the built demo.</summary>
    public string Site { get; } = Directory.CreateTempSubdirectory("witnessmark-site-").FullName;

    /// <summary>Where pictures go: out/look when `tests/look` asks for them.</summary>
    public static string? Pictures => Environment.GetEnvironmentVariable("WITNESSMARK_LOOK");

    public IBrowser Browser => _browser ?? throw new InvalidOperationException("the browser has not started");

    public async ValueTask InitializeAsync()
    {
        foreach (var file in Pipeline.Build(Pipeline.Check(Repo.Files(Repo.OneBrake)), "0.0.0", Repo.Records(Repo.OneBrake)))
        {
            var path = Path.Combine(Site, file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            await File.WriteAllBytesAsync(path, file.Bytes.ToArray());
        }
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = BrowserFinder.OfThisMachine.Find(),
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _playwright?.Dispose();
        Directory.Delete(Site, recursive: true);
    }

    public string Url(string path) => new Uri(Path.Combine(Site, path)).AbsoluteUri;

    public IEnumerable<string> Pages =>
        Directory.EnumerateFiles(Site, "*.html", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(Site, f).Replace('\\', '/')).Order(StringComparer.Ordinal);

    public async Task<IPage> Open(string path, int width)
    {
        var page = await Browser.NewPageAsync(new BrowserNewPageOptions { ViewportSize = new ViewportSize { Width = width, Height = 900 } });
        await page.GotoAsync(Url(path));
        return page;
    }
}

[CollectionDefinition("browser")]
public sealed class BrowserCollection : ICollectionFixture<Chromium>;
