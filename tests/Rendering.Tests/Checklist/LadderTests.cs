using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Checklist.Asks;

namespace Witnessmark.Rendering.Tests.Checklist;

public class LadderTests
{
    [Fact]
    public void The_ladder_is_read_like_a_page()
    {
        var ask = Demo.Plan().Steps.SelectMany(s => s.Asks.OfType<StackAsk>()).Single();
        var rows = Ladder.Rows(ask.Cells);
        Assert.Equal("E1 D1 | P1 D2 | P2 D3 | P3 D4 | P4 D5 | P5 D6 | P6 D7 | P7 D8 | P8 D9 | E2", string.Join(" | ", rows.Select(r => string.Join(' ', r.Select(c => c.Label)))));
        Assert.Equal(Enumerable.Range(1, 19), rows.SelectMany(r => r).Select(c => c.Position));
    }

    [Fact]
    public void Nineteen_cells_are_struck_and_the_second_person_says_what_he_sees_of_each_faced_part()
    {
        var ladder = Markup.Between(Demo.Sheet(), "<div class=\"ladder\">", "</article>");
        Assert.Equal(19, Markup.Count(ladder, "<span class=\"rung\">"));
        Assert.Contains("<b>E1 shows</b> <span class=\"cell\">FACING</span> <span class=\"cell\">STEEL</span>", ladder, StringComparison.Ordinal);
        Assert.Contains("<b>E2 shows</b> <span class=\"cell\">FACING</span> <span class=\"cell\">STEEL</span>", ladder, StringComparison.Ordinal);
        Assert.Contains("facing to<br>PISTON", ladder, StringComparison.Ordinal);
        Assert.Contains("facing to<br>RING", ladder, StringComparison.Ordinal);
        Assert.Contains("19 in<br>0 left", ladder, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stack_taller_than_a_page_is_parted_between_lines()
    {
        var library = Demo.Read(
            ("machines/okr-34.yaml", "- 8 x steel-plate, friction-disc", "- 38 x steel-plate, friction-disc"),
            ("machines/okr-34.yaml", "count: 8", "count: 38"), ("machines/okr-34.yaml", "count: 9", "count: 39"));
        var html = SheetPage.Render(Demo.Plan(library), Demo.Issued, Paper.Letter, Words.English);
        var ladders = html.Split("<div class=\"ladder\">")[1..];
        Assert.Equal([28, 28, 23], ladders.Select(l => Markup.Count(l, "<span class=\"rung\">")));
        Assert.Equal(["PISTON", "… D14", "… D28"], ladders.Select(l => Markup.Between(l, "<p class=\"end\">", "</p>")));
        Assert.Equal([0, 0, 1], ladders.Select(l => Markup.Count(l, "79 in<br>0 left")));
        Assert.Equal([1, 0, 0], ladders.Select(l => Markup.Count(l, "<b>E1 shows</b>")));
        Assert.Equal([0, 0, 1], ladders.Select(l => Markup.Count(l, "<b>E2 shows</b>")));
        Assert.Contains("“next is P28”", ladders[2], StringComparison.Ordinal);
    }
}
