using System.Globalization;
using System.Net;
using System.Net.Sockets;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;
using Witnessmark.Press.Tests.Proof;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press.Tests;

[Collection("press")]
public sealed class PrintingPressTests(Room room)
{
    [Fact]
    public async Task The_same_sheet_is_the_same_file_from_another_press_and_after_other_sheets()
    {
        var sheet = Prints.Wb40.Sheet;
        await using var other = await PrintingPress.Start(BrowserFinder.OfThisMachine.Find());
        var first = await other.Print([sheet]);
        var later = await room.Press.Print([Prints.Wb40.Issued(Paper.Letter).Sheet, sheet, sheet]);

        Assert.True(first[0].Pdf.Span.SequenceEqual(later[1].Pdf.Span));
        Assert.True(first[0].Pdf.Span.SequenceEqual(later[2].Pdf.Span));
        Assert.False(first[0].Pdf.Span.SequenceEqual(later[0].Pdf.Span));
    }

    [Fact]
    public async Task The_file_says_what_it_is_and_nothing_of_when_and_where_it_was_made()
    {
        using var pdf = PdfDocument.Open((await room.Print(Prints.Wb40)).ToArray());

        Assert.StartsWith("WB-40 2.1.0 · ", pdf.Information.Title, StringComparison.Ordinal);
        Assert.EndsWith(" · SPECIMEN, not issued · Build the disc stack and close it", pdf.Information.Title, StringComparison.Ordinal);
        Assert.Equal("Witnessmark", pdf.Information.Creator);
        Assert.Equal(new DateTimeOffset(2000, 1, 1, 0, 0, 0, TimeSpan.Zero), pdf.Information.GetCreatedDateTimeOffset());
        Assert.Equal(pdf.Information.CreationDate, pdf.Information.ModifiedDate);
    }

    [Fact]
    public async Task Its_bookmarks_are_the_title_the_sections_and_every_step()
    {
        using var pdf = PdfDocument.Open((await room.Print(Prints.Wb40)).ToArray());
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        var titles = bookmarks.GetNodes().Select(n => SheetText.Bare(n.Title)).ToList();

        foreach (var section in Prints.Wb40.Plan.Sections)
            Assert.Contains(titles, t => t.StartsWith(SheetText.Bare(section.Section.Heading!.Value.Value), StringComparison.Ordinal));
        Assert.Empty(Prints.Wb40.Plan.Steps.Select(s => SheetText.Bare(s.Code.ToString())).Except(titles));
    }

    [Fact]
    public async Task A_screen_reader_is_told_its_language_and_its_parts_and_passes_over_the_square_codes()
    {
        using var pdf = PdfDocument.Open((await room.Print(Prints.Wb40)).ToArray());
        var catalog = pdf.Structure.Catalog.CatalogDictionary;

        Assert.Equal("en", ((StringToken)catalog.Data["Lang"]).Data);
        Assert.True(catalog.ContainsKey(NameToken.StructTreeRoot));
        Assert.All(pdf.GetPages(), page =>
        {
            var marked = page.GetMarkedContents();
            Assert.Single(marked, m => m.IsArtifact);
            Assert.Contains(marked, m => m.Tag == "NonStruct");
        });
    }

    [Fact]
    public async Task The_code_stands_where_the_browser_puts_the_one_that_is_the_same_on_every_page()
    {
        var print = Prints.Wb40;
        var browsers = (await room.Press.Print([new PressSheet(SheetPage.Render(print.Plan, print.Identity, Paper.A4, print.Words), Code: null)]))[0].Pdf;
        var code = print.CodePlace(new Area(0, 0, 594.96, 841.92));
        var black = Drawn(browsers, code);
        var ours = Drawn(await room.Print(print), code);

        Assert.Equal(black.Left, ours.Left, tolerance: 2 * Area.Millimetre);
        Assert.Equal(black.Top, ours.Top, tolerance: 2 * Area.Millimetre);
        Assert.Equal(black.Width, ours.Width, tolerance: 2 * Area.Millimetre);
    }

    [Theory]
    [InlineData("<img src=\"http://{0}/far.png\">")]
    [InlineData("<link rel=stylesheet href=\"http://{0}/far.css\">")]
    [InlineData("<iframe src=\"http://{0}/far.html\"></iframe>")]
    [InlineData("<style>p{{background:url(http://{0}/far.svg)}}</style>")]
    public async Task Nothing_is_fetched(string smuggled)
    {
        using var far = new TcpListener(IPAddress.Loopback, 0);
        far.Start();
        var html = $"<!doctype html><title>a sheet</title><body><p>printed</p>{string.Format(CultureInfo.InvariantCulture, smuggled, far.LocalEndpoint)}";

        Assert.Equal("printed", await Said(html));
        Assert.False(far.Pending());
    }

    [Theory]
    [InlineData("<script>document.body.textContent = 'script ran'</script>")]
    [InlineData("<img src=x onerror=\"document.body.textContent = 'script ran'\">")]
    [InlineData("<iframe src=\"file:///etc/hostname\"></iframe>")]
    public async Task Nothing_runs_and_nothing_of_the_machine_is_shown(string smuggled) =>
        Assert.Equal("printed", await Said($"<!doctype html><title>a sheet</title><body><p>printed</p>{smuggled}"));

    [Fact]
    public async Task A_browser_that_is_none_is_told_of()
    {
        var refused = await Assert.ThrowsAsync<PressException>(() => PrintingPress.Start("/bin/false"));

        Assert.StartsWith("/bin/false does not start", refused.What, StringComparison.Ordinal);
    }

    private async Task<string> Said(string html)
    {
        using var read = PdfDocument.Open((await room.Press.Print([new PressSheet(html, Code: null)]))[0].Pdf.ToArray());
        return string.Concat(read.GetPages().SelectMany(p => p.Letters).Select(l => l.Value)).Trim();
    }

    /// <summary>What is black in and just around the place of the code.</summary>
    private static Area Drawn(ReadOnlyMemory<byte> pdf, Area code)
    {
        using var read = PdfDocument.Open(pdf.ToArray());
        return read.GetPage(1).Paths
            .Where(p => p.IsFilled && p.FillColor?.ToRGBValues().r < 0.5)
            .Select(p => p.GetBoundingRectangle()).OfType<UglyToad.PdfPig.Core.PdfRectangle>()
            .Select(b => new Area(b.Left, b.Bottom, b.Right, b.Top))
            .Where(a => code.Holds(a, 3 * Area.Millimetre))
            .Aggregate((a, b) => a.With(b));
    }
}
