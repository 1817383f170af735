using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace Witnessmark.Browser.Tests.Photocopy;

/// <summary>What a sheet must still do as the copy of a copy: be read by a phone, be written in, warn.</summary>
[Collection("browser")]
public sealed partial class CopiedSheetTests(Chromium chromium)
{
    private const string Sheet = "sheets/wb-40-a4.html";
    private const string Tags = "sheets/wb-40--tags-a4.html";

    /// <summary>Letters that are told apart by their counters, in the smallest type of the sheet, a box each.</summary>
    private const string Letters = "0468 9ABDOPQR abdegopq";

    /// <summary>Of the strokes and counters of the smallest words, clean against copied; 1 is the same.</summary>
    private const double LeastLikeness = 0.88;

    public static TheoryData<Copier> Both => [Copier.Lean, Copier.Fat];

    public static TheoryData<string, string> Outlined => new() { { Sheet, ".box, .cell, .rung" }, { Tags, ".box, .cut:not(.rows2)" } };

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_phone_reads_the_square_code(Copier copier)
    {
        var page = await Shot.Open(chromium, Sheet, Media.Screen);
        var identity = await page.Locator("footer b").First.TextContentAsync() ?? "";
        await page.EvaluateAsync("document.querySelector('footer svg').scrollIntoView({ block: 'center' })");
        var shot = await Shot.Take(page, "footer svg");
        await page.CloseAsync();
        var (code, quiet) = (shot.Marks.Single(), 2 * Raster.PerMillimetre);
        var copy = Cut(copier.Twice(shot.Page, 11), code, quiet);
        Shot.Picture(copy, $"copied-code-{copier.Name}");
        Assert.Equal(Said().Match(identity).Groups[1].Value + " " + Said().Match(identity).Groups[2].Value.Replace(" ", "", StringComparison.Ordinal), Read(copy));
    }

    [Theory]
    [MemberData(nameof(Outlined))]
    public async Task Every_box_is_still_closed(string path, string boxes)
    {
        var page = await Shot.Open(chromium, path, Media.Print);
        var all = await page.EvaluateAsync<int>("s => [...document.querySelectorAll(s)].filter(e => e.getClientRects().length).length", boxes);
        var seen = new HashSet<int>();
        var open = new List<string>();
        var number = 0;
        var tallest = await page.EvaluateAsync<int>("s => Math.ceil(Math.max(...[...document.querySelectorAll(s)].map(e => e.getBoundingClientRect().height)))", boxes);
        await foreach (var shot in Shot.Windows(page, boxes, tallest))
        {
            number++;
            var fresh = shot.Marks.Where(m => seen.Add(m.Id)).ToList();
            // a fat copy adds ink: only a lean one opens a box
            var copied = Copier.Lean.Twice(shot.Page, number);
            Shot.Picture(copied.Page, $"copied-{Path.GetFileNameWithoutExtension(path)}-{number}");
            open.AddRange(from m in fresh from p in m.Outline() where !copied.IsBlack(p.X, p.Y, p.Across) select $"window {number}, {m.Name}, at {p.X - m.X:0} {p.Y - m.Y:0} of {m.Width:0} {m.Height:0}");
        }
        await page.CloseAsync();
        Assert.Empty(open);
        Assert.Equal(Enumerable.Range(0, all), seen.Order());
        Assert.True(all > 20, $"only {all} boxes");
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task Signal_words_are_told_apart_without_reading_them(Copier copier)
    {
        var page = await Shot.Open(chromium, Sheet, Media.Print);
        await page.EvaluateAsync(
            """
            () => {
              const first = document.querySelector('.message');
              document.body.replaceChildren(...['danger', 'warning', 'caution', 'notice'].map(kind => {
                const box = first.cloneNode(true);
                box.className = 'message ' + kind;
                box.style.margin = '8mm';
                return box;
              }));
              scrollTo(0, 0);
            }
            """);
        var shot = await Shot.Take(page, ".message");
        await page.CloseAsync();
        var copied = copier.Twice(shot.Page, 5);
        Shot.Picture(copied.Page, $"copied-signal-words-{copier.Name}");
        Assert.Equal(4, shot.Marks.Count);
        var ink = shot.Marks.Select(m => Ink(copied, m)).ToList();
        Assert.True(ink[0] > 0.6, $"DANGER is {ink[0]:P0} black");
        Assert.All(ink.Skip(1), i => Assert.True(i < 0.4, $"another is {i:P0} black"));
        var rules = shot.Marks.Skip(1).Select(m => Weight(copied, m)).ToList();
        Assert.True(rules[0] - rules[1] > 0.4, $"WARNING {rules[0]:0.00} mm, CAUTION {rules[1]:0.00} mm");
        Assert.True(rules[1] - rules[2] > 0.2, $"CAUTION {rules[1]:0.00} mm, NOTICE {rules[2]:0.00} mm");
        var stripes = shot.Marks.Select(m => Stripes(copied, m)).ToList();
        Assert.True(stripes[1] >= 3, $"WARNING has {stripes[1]} stripes");
        Assert.All([stripes[0], stripes[2], stripes[3]], s => Assert.True(s <= 1, $"another has {s} stripes"));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task The_smallest_letters_keep_their_counters(Copier copier)
    {
        var page = await Shot.Open(chromium, Sheet, Media.Print);
        await page.EvaluateAsync(
            """
            letters => {
              const line = document.createElement('p');
              line.style.cssText = 'margin:10mm;font:700 11pt/30pt "Liberation Sans",Arial,sans-serif';
              line.append(...[...letters].filter(l => l !== ' ').map(l => {
                const one = document.createElement('span');
                one.className = 'letter';
                one.textContent = l;
                one.style.cssText = 'display:inline-block;padding:0 1mm;margin-right:1mm';
                return one;
              }));
              document.body.replaceChildren(line);
            }
            """, Letters);
        var shot = await Shot.Take(page, ".letter");
        await page.CloseAsync();
        var copied = copier.Twice(shot.Page, 17);
        Shot.Picture(copied.Page, $"copied-letters-{copier.Name}");
        var holes = shot.Marks.Select(m => $"{m.Name[^1]} {Holes.In(shot.Page, m)} {Holes.In(copied.Piece(m.X, m.Y, (int)m.Width, (int)m.Height))}").ToList();
        Assert.Equal(Letters.Replace(" ", "", StringComparison.Ordinal).Length, holes.Count);
        Assert.All(holes, h => Assert.Equal(h[0] is '8' or 'B' or 'g' && h[2] == '2' ? '2' : '1', h[2]));
        // a mouth that closes, as that of the a in a fat copy, still leaves an a
        Assert.All(holes, h => Assert.True(h[4] >= h[2], $"letter, counters before and after: {h}"));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task The_smallest_words_are_like_the_clean_ones(Copier copier)
    {
        var page = await Shot.Open(chromium, Sheet, Media.Print);
        await page.EvaluateAsync("document.querySelector('.passes').scrollIntoView({ block: 'center' })");
        var shot = await Shot.Take(page, ".beside, .who, .faces, .under, .gets");
        await page.CloseAsync();
        var copied = copier.Twice(shot.Page, 23);
        Shot.Picture(copied.Page, $"copied-words-{copier.Name}");
        Assert.True(shot.Marks.Count > 3, $"only {shot.Marks.Count} words of the smallest type");
        var clean = shot.Page.Blurred(Copier.BlurMillimetres * Raster.PerMillimetre);
        Assert.All(shot.Marks, m =>
        {
            var likeness = Likeness(clean, m, copied.Piece(m.X, m.Y, (int)m.Width, (int)m.Height).Blurred(Copier.BlurMillimetres * Raster.PerMillimetre));
            Assert.True(likeness > LeastLikeness, $"{m.Name}: {likeness:0.00}");
        });
    }

    [Theory]
    [InlineData(Sheet)]
    [InlineData(Tags)]
    public async Task No_rule_prints_thinner_than_half_a_millimetre(string path)
    {
        var page = await Shot.Open(chromium, path, Media.Print);
        // as the browser draws them: whole pixels
        var weights = await page.EvaluateAsync<double[]>(
            "[...document.body.querySelectorAll('*')].flatMap(e => { const s = getComputedStyle(e); return [s.borderTopWidth, s.borderRightWidth, s.borderBottomWidth, s.borderLeftWidth]; }).map(parseFloat).filter(w => w > 0)");
        await page.CloseAsync();
        Assert.True(weights.Length > 100);
        Assert.All(weights.Distinct(), w => Assert.True(w * 25.4 / 96 >= 0.5, $"a rule of {w * 25.4 / 96:0.00} mm"));
    }

    private static string? Read(Raster copy)
    {
        var seen = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(copy.Grey, copy.Width, copy.Height, RGBLuminanceSource.BitmapFormat.Gray8)));
        return new QRCodeReader().decode(seen, new Dictionary<DecodeHintType, object> { [DecodeHintType.TRY_HARDER] = true })?.Text;
    }

    // as a phone is held: the code fills the picture, still askew
    private static Raster Cut(Copied copied, Mark code, double around)
    {
        var (x, y) = copied.Way.Of(code.X, code.Y);
        var cut = Raster.White((int)(code.Width + (2 * around)), (int)(code.Height + (2 * around)));
        for (var row = 0; row < cut.Height; row++)
            for (var column = 0; column < cut.Width; column++)
                cut.Grey[(row * cut.Width) + column] = copied.Page[(int)(x - around) + column, (int)(y - around) + row];
        return cut;
    }

    private static double Ink(Copied copied, Mark mark)
    {
        var piece = copied.Piece(mark.X, mark.Y, (int)mark.Width, (int)mark.Height);
        return piece.Grey.Count(g => g < 128) / (double)piece.Grey.Length;
    }

    /// <summary>Of the left rule in mm: black pixels from the outer edge inward, the middle one of many lines.</summary>
    private static double Weight(Copied copied, Mark mark)
    {
        const int Before = 8;
        var piece = copied.Piece(mark.X - Before, mark.Y + (mark.Height * 0.25), Before + 60, (int)(mark.Height * 0.5));
        var lines = Enumerable.Range(0, piece.Height)
            .Select(y => Enumerable.Range(0, piece.Width).SkipWhile(x => piece[x, y] >= 128).TakeWhile(x => piece[x, y] < 128).Count())
            .Order().ToList();
        return lines[lines.Count / 2] / Raster.PerMillimetre;
    }

    /// <summary>Black runs from top to bottom, between the rule and the word.</summary>
    private static int Stripes(Copied copied, Mark mark)
    {
        const double In = 0.75;
        var piece = copied.Piece(mark.X + mark.Border + (In * Raster.PerMillimetre), mark.Y + (2 * Raster.PerMillimetre), 1, (int)(mark.Height - (4 * Raster.PerMillimetre)));
        return Enumerable.Range(1, piece.Height - 1).Count(y => piece[0, y] < 128 && piece[0, y - 1] >= 128);
    }

    /// <summary>Pearson's correlation of the grey values.</summary>
    private static double Likeness(Raster clean, Mark at, Raster copied)
    {
        var points = (from y in Enumerable.Range(0, copied.Height) from x in Enumerable.Range(0, copied.Width) select (A: clean.At(at.X + x, at.Y + y), B: (double)copied[x, y])).ToList();
        var (a, b) = (points.Average(p => p.A), points.Average(p => p.B));
        return points.Sum(p => (p.A - a) * (p.B - b)) / Math.Sqrt(points.Sum(p => (p.A - a) * (p.A - a)) * points.Sum(p => (p.B - b) * (p.B - b)));
    }

    [GeneratedRegex(@"^(\S+ \S+) · ((?:[0-9A-F]{4} ?){3})(?= ·)")]
    private static partial Regex Said();
}
