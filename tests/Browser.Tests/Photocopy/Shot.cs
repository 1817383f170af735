using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests.Photocopy;

/// <summary>A piece of a printed page as a picture, with what stands in it. Places are in pixels of the picture.</summary>
public sealed record Shot(Raster Page, IReadOnlyList<Mark> Marks)
{
    private const int Margin = 72;
    private const double PixelsPerCss = Raster.DotsPerInch / 96;

    /// <summary>A window of a sheet: 189 mm between clamp and right edge, 240 mm high. Tags have the whole paper.</summary>
    private const int SheetWidth = 714;
    private const int PaperWidth = 794;
    public const int WindowHeight = 907;

    private const string Find =
        """
        selector => [...document.querySelectorAll(selector)].map((e, i) => {
          const r = e.getBoundingClientRect(), s = getComputedStyle(e);
          return { Id: i, Name: e.className + ' ' + e.textContent.trim().slice(0, 20), X: r.left, Y: r.top, Width: r.width, Height: r.height, Border: parseFloat(s.borderLeftWidth) };
        }).filter(m => m.Width > 0 && m.Y >= 0 && m.Y + m.Height <= innerHeight && m.X >= -1 && m.X + m.Width <= innerWidth + 1)
        """;

    public static async Task<IPage> Open(Chromium chromium, string path, Media media)
    {
        var page = await chromium.Browser.NewPageAsync(new BrowserNewPageOptions
        {
            ViewportSize = new ViewportSize { Width = path.Contains("tags", StringComparison.Ordinal) ? PaperWidth : SheetWidth, Height = WindowHeight },
            DeviceScaleFactor = (float)PixelsPerCss,
            BypassCSP = true,
        });
        await page.GotoAsync(chromium.Url(path));
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = media });
        // the last box of a page is not cut by the end of the document
        await page.EvaluateAsync("document.body.style.paddingBottom = '20px'");
        return page;
    }

    /// <summary>Every window of a page from top to bottom.</summary>
    /// <param name="tallest">Of what is looked for: windows overlap by so much, so that nothing is cut in all of them.</param>
    public static async IAsyncEnumerable<Shot> Windows(IPage page, string selector, int tallest)
    {
        var height = await page.EvaluateAsync<int>("document.documentElement.scrollHeight");
        var step = WindowHeight - tallest - 20;
        for (var top = 0; top == 0 || top < height - WindowHeight + step; top += step)
        {
            await page.EvaluateAsync("y => scrollTo(0, y)", top);
            yield return await Take(page, selector);
        }
    }

    public static async Task<Shot> Take(IPage page, string selector)
    {
        var marks = await page.EvaluateAsync<Mark[]>(Find, selector);
        var png = await page.ScreenshotAsync(new PageScreenshotOptions { Animations = ScreenshotAnimations.Disabled });
        return new Shot(Raster.FromPng(png, Margin), [.. marks.Select(m => m.In(PixelsPerCss, Margin))]);
    }

    /// <summary>For the eye, when `tests/look` asks.</summary>
    public static void Picture(Raster raster, string name)
    {
        if (Chromium.Pictures is { } folder)
            File.WriteAllBytes(Path.Combine(folder, name + ".png"), raster.ToPng());
    }
}

/// <summary>An element: its outer edge and the weight of its left rule.</summary>
public sealed class Mark
{
    public int Id { get; set; }
    public string Name { get; set; } = "";
    public double X { get; set; }
    public double Y { get; set; }
    public double Width { get; set; }
    public double Height { get; set; }
    public double Border { get; set; }

    /// <summary>In pixels of the picture, counted from the middle of the first.</summary>
    public Mark In(double scale, double margin) => new()
    {
        Id = Id, Name = Name, X = (X * scale) + margin - 0.5, Y = (Y * scale) + margin - 0.5, Width = Width * scale, Height = Height * scale, Border = Border * scale,
    };

    /// <summary>Points every half millimetre along the middle of its four rules, and the direction across each; corners go round on a copy.</summary>
    public IEnumerable<(double X, double Y, (double X, double Y) Across)> Outline()
    {
        var half = Border / 2;
        var step = Raster.PerMillimetre / 2;
        for (var x = X + step; x <= X + Width - step; x += step)
        {
            yield return (x, Y + half, (0, 1));
            yield return (x, Y + Height - half, (0, 1));
        }
        for (var y = Y + step; y <= Y + Height - step; y += step)
        {
            yield return (X + half, y, (1, 0));
            yield return (X + Width - half, y, (1, 0));
        }
    }
}
