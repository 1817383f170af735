using Microsoft.Playwright;
using Witnessmark.Harness;

namespace Witnessmark.Browser.Tests;

/// <summary>The colours that a browser really shows, against those of the standards; and that paper has none.</summary>
[Collection("browser")]
public sealed class SignalTests(Chromium chromium)
{
    public static TheoryData<string> Pages => ["sheets/wb-40-a4.html", "procedures/wb-40.html"];

    /// <summary>Puts a message of the kind into the page and tells the colours of its word.</summary>
    private const string Shown =
        """
        kind => {
          const box = document.querySelector('.message').cloneNode(true);
          box.className = 'message ' + kind;
          document.body.append(box);
          const style = getComputedStyle(box.querySelector('.word'));
          const hex = colour => '#' + (colour.match(/\d+/g) ?? []).slice(0, 3).map(n => Number(n).toString(16).padStart(2, '0')).join('');
          return hex(style.backgroundColor) + ' ' + hex(style.color);
        }
        """;

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Every_word_has_its_colours_on_screen(string path)
    {
        foreach (var scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
        {
            var page = await chromium.Browser.NewPageAsync(new BrowserNewPageOptions { ColorScheme = scheme });
            await page.GotoAsync(chromium.Url(path));
            foreach (var row in Csv.Reference("safety-colours.csv"))
                Assert.Equal($"{row["word"]} {row["panel"]} {row["letters"]}", $"{row["word"]} {await page.EvaluateAsync<string>(Shown, row["word"])}");
            await page.CloseAsync();
        }
    }

    [Fact]
    public async Task Paper_is_black_and_white()
    {
        var page = await chromium.Open("sheets/wb-40-a4.html", 900);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        foreach (var row in Csv.Reference("safety-colours.csv"))
            Assert.Matches("^#(000000|ffffff) #(000000|ffffff)$", await page.EvaluateAsync<string>(Shown, row["word"]));
        await page.CloseAsync();
    }
}
