using System.Collections.Immutable;
using System.Globalization;
using Microsoft.Playwright;
using Witnessmark.Compiler;
using Witnessmark.Engineering.Printing;
using Witnessmark.Harness;
using Witnessmark.Language.Model;

namespace Witnessmark.Browser.Tests;

/// <summary>Widths of words in the table and in the browser that prints the sheet.</summary>
[Collection("browser")]
public sealed class SansBoldTests(Chromium chromium)
{
    private const double MillimetresPerPixel = 25.4 / 96;
    private static readonly string[] Spanish = ["Apriete los pernos del anillo", "¿Qué señal? Añada aceite, según la página 3.", "Mida el disco 12: Ø 4,92 ± 0,08 mm (máx. 40 %)"];

    [Fact]
    public async Task Names_are_as_wide_as_the_browser_prints_them()
    {
        var bench = Pipeline.Check(Repo.Files(Repo.OneBrake));
        string[] words = [.. bench.Library.Procedures.SelectMany(p => p.Steps).Select(s => s.NameWithStop), .. Spanish, "0123456789.,:;-–/()%+±×"];
        Assert.True(words.Length > 20);
        var page = await chromium.Open("sheets/wb-40-a4.html", 900);
        var pixels = await page.EvaluateAsync<double[]>(
            "([words, points]) => { const c = document.createElement('canvas').getContext('2d'); c.font = `700 ${points}pt \"Liberation Sans\", Arial`; return words.map(w => c.measureText(w).width); }",
            new object[] { words, SheetMeasures.Body.Value.ToString(CultureInfo.InvariantCulture) });
        await page.CloseAsync();
        Assert.All(words.Zip(pixels), pair =>
            Assert.InRange(SansBold.Width(pair.First, SheetMeasures.Body) / (pair.Second * MillimetresPerPixel), 0.99, 1.01));
    }

    /// <summary>The rules count lines with room to spare, never with too little.</summary>
    [Theory]
    [InlineData("sheets/wb-40-a4.html")]
    [InlineData("sheets/wb-40-letter.html")]
    public async Task The_column_of_the_words_is_no_narrower_than_the_rules_say(string path)
    {
        var page = await chromium.Open(path, 900);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        var width = path.Contains("a4", StringComparison.Ordinal) ? 210 : 215.9;
        width -= SheetMeasures.Clamp.Millimetres + SheetMeasures.Right.Millimetres;
        var rows = await page.EvaluateAsync<double[][]>(
            "width => { document.body.style.width = width + 'mm'; return [...document.querySelectorAll('.row')].map(r => [r.querySelector('.words').getBoundingClientRect().width, r.querySelectorAll('.boxes > *').length, r.querySelector('.boxes')?.textContent.trim() === 'DONE' ? 1 : 0]); }", width);
        await page.CloseAsync();
        Assert.True(rows.Length > 20);
        Assert.All(rows, r => Assert.True(r[0] * MillimetresPerPixel >= (r[1] == 0 || r[2] == 1 ? StepColumn.Free : StepColumn.BesideBoxes) - 0.1, $"{r[0] * MillimetresPerPixel:0.0} mm beside {r[1]} boxes"));
    }

    [Fact]
    public async Task A_message_is_no_taller_than_the_rule_says()
    {
        var page = await chromium.Open("sheets/wb-40-a4.html", 900);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        var width = 210 - SheetMeasures.Clamp.Millimetres - SheetMeasures.Right.Millimetres;
        var heights = await page.EvaluateAsync<double[]>("width => { document.body.style.width = width + 'mm'; return [...document.querySelectorAll('.warns')].map(w => w.getBoundingClientRect().height); }", width);
        await page.CloseAsync();
        var messages = Pipeline.Check(Repo.Files(Repo.OneBrake)).Library.Procedures.SelectMany(p => p.Steps).SelectMany(s => s.Messages).ToList();
        Assert.Equal(messages.Count, heights.Length);
        Assert.All(messages.Zip(heights), pair =>
        {
            var says = pair.First.Avoid.Select(Text).Prepend($"{pair.First.Nature.Value} {Text(pair.First.Rest)}");
            Assert.InRange(pair.Second * MillimetresPerPixel, 10, MessageRoom.Height(MessageRoom.A4.Lines(says)) + 0.1);
        });
    }

    private static string Text(ImmutableArray<Inline> text) => text.Plain();
}
