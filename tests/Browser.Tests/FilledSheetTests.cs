using Microsoft.Playwright;
using Witnessmark.Compiler;
using Witnessmark.Harness;

namespace Witnessmark.Browser.Tests;

/// <summary>A copy as it comes back: written full by a gloved hand, inside its boxes.</summary>
[Collection("browser")]
public sealed class FilledSheetTests(Chromium chromium)
{
    /// <summary>Writes into every box what an apprentice would: readings around the printed point, counts, initials, times; strikes cells.</summary>
    private const string Pen =
        """
        () => {
          const say = (box, text) => {
            const ink = document.createElement('span');
            ink.className = 'ink';
            ink.textContent = text;
            ink.style.cssText = 'position:absolute;left:50%;top:50%;transform:translate(-50%,-50%) rotate(-4deg);font:600 7mm/1 "DejaVu Sans",sans-serif;white-space:nowrap';
            box.style.position = 'relative';
            box.append(ink);
          };
          const values = [[/mean of cavity/, '86 20'], [/sum of disc/, '45 18'], [/sum of plate/, '25 36'], [/sum of end/, '12 42'], [/running clearance|own result/, '3 24'],
            [/N·m/, '235'], [/machine hours/, '12405'], [/place/, 'CL'], [/at step/, ''], [/must be 0/, '0'], [/of (\d+)/, null]];
          const hold = ['19', '0', '235'];
          const reading = piece => ({ D: '5 02', P: '3 17', E: '6 21' })[piece[0]] ?? '86 20';
          const near = box => box.closest('.term, .field, .second')?.textContent.trim() ?? '';
          const second = box => box.closest('.second, .hold, .ladder') !== null;
          const written = box => {
            if (box.closest('.seen')) return hold.shift();
            const found = values.find(([words]) => words.test(near(box)));
            if (found && !/^by/.test(near(box))) return found[1] ?? near(box).match(found[0])[1];
            if (box.classList.contains('reading')) return reading(box.closest('tr')?.querySelector('th')?.textContent.trim() ?? '');
            if (box.classList.contains('clock')) return /Broke/.test(box.closest('.fields')?.textContent ?? '') && box === [...box.closest('.fields').querySelectorAll('.clock')].at(-1) ? '' : '10 42';
            if (box.classList.contains('date')) return '11 June';
            if (box.classList.contains('tool')) return 'no. 3';
            return second(box) || /helper/.test(near(box)) ? 'TV' : 'MO';
          };
          for (const box of document.querySelectorAll('.box')) say(box, written(box));
          const faces = new Set();
          for (const cell of document.querySelectorAll('.cell, .rung')) {
            if (cell.classList.contains('write') || /wrong/.test(cell.textContent)) continue;
            // of two answers one is struck
            if (cell.matches('.ask .cell')) { if (faces.has(cell.parentElement)) continue; faces.add(cell.parentElement); }
            const stroke = document.createElement('span');
            stroke.style.cssText = 'position:absolute;left:4%;right:4%;top:50%;border-top:.9mm solid #000;transform:rotate(-3deg)';
            cell.style.position = 'relative';
            cell.append(stroke);
          }
          return [...document.querySelectorAll('.ink')].map(i => {
            const ink = i.getBoundingClientRect(), box = i.parentElement.getBoundingClientRect();
            return ink.height > box.height + 1 ? i.textContent + ' in ' + Math.round(box.height) : '';
          }).filter(t => t);
        }
        """;

    [Fact]
    public async Task Writing_of_seven_millimetres_stays_inside_every_box()
    {
        var bench = Pipeline.Check(Repo.Files(Repo.OneBrake));
        var order = new IssueOrder("WB-40", null, "14", "0417", "CL", "RK", new DateTimeOffset(2031, 6, 11, 6, 40, 0, TimeSpan.FromHours(2)), "A4");
        var sheet = Pipeline.Issue(bench, order).Files.Single(f => f.Path.EndsWith(".html", StringComparison.Ordinal) && !f.Path.EndsWith("-tags.html", StringComparison.Ordinal) && !f.Path.EndsWith("-card.html", StringComparison.Ordinal));
        var file = Path.Combine(chromium.Site, "issued.html");
        await File.WriteAllBytesAsync(file, sheet.Bytes.ToArray());
        var page = await chromium.Open("issued.html", 900);
        if (Chromium.Pictures is { } folder)
            await File.WriteAllBytesAsync(Path.Combine(folder, "sheet-issued.pdf"), await page.PdfAsync(new PagePdfOptions { PreferCSSPageSize = true, PrintBackground = true }));
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        Assert.Empty(await page.EvaluateAsync<string[]>(Pen));
        if (Chromium.Pictures is { } pictures)
            await File.WriteAllBytesAsync(Path.Combine(pictures, "sheet-filled.pdf"), await page.PdfAsync(new PagePdfOptions { PreferCSSPageSize = true, PrintBackground = true }));
        await page.CloseAsync();
        File.Delete(file);
    }
}
