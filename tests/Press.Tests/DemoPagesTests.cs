using Witnessmark.Press.Tests.Proof;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press.Tests;

/// <summary>Every sheet of the demo, page by page.</summary>
[Collection("press")]
public sealed class DemoPagesTests(Room room)
{
    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public async Task No_page_of_the_demo_breaks_a_rule(Paper paper)
    {
        await room.Prove([.. Prints.Demo.SelectMany(p => new[] { p.On(paper), p.Issued(paper) })]);
    }

    /// <summary>
    /// Another browser, another cut of the same type, a longer name: what fits to a hair here goes over there, and takes a page with it.
    /// And a page that is left half empty is carried, signed and filed like a full one. The last ends where the work ends.
    /// </summary>
    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public async Task Every_page_of_the_demo_has_room_to_spare_and_none_is_near_empty(Paper paper)
    {
        const double Spare = 5;
        const double MostEmpty = 0.3;

        var prints = Prints.Demo.SelectMany(p => new[] { p.On(paper), p.Issued(paper) }).ToList();
        var printed = await room.Press.Print([.. prints.Select(p => p.Sheet)]);
        var wrong = prints.Zip(printed).SelectMany(p => ProvedPages.Pages(p.Second.Pdf, p.First).Where(page => page.Number < p.Second.Pages)
            .Select(page => (page.Number, Free: Free(page), Height: page.Inner.Height / Area.Millimetre))
            .Where(f => f.Free < Spare || f.Free > f.Height * MostEmpty)
            .Select(f => $"{p.First} in {p.First.Words.Language}, page {f.Number}: {f.Free:0.0} mm of {f.Height:0} mm are free")).ToList();
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    /// <summary>Millimetres between what is printed lowest and the foot.</summary>
    private static double Free(PrintedPage page) =>
        (page.Drawn.Concat(page.Signs.Select(s => s.Place)).Min(a => a.Bottom) - page.Inner.Bottom) / Area.Millimetre;
}
