using Witnessmark.Harness;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Fender;
using Witnessmark.Rendering.Tests.Checklist;

namespace Witnessmark.Rendering.Tests.Fender;

public sealed class FenderCardTests
{
    [Fact]
    public void The_demo_card_reads_as_approved() => Approved.Check("Rendering.Tests/Fender/wb-40.approved.html", Markup.Body(Card()));

    [Fact]
    public void Every_pass_of_every_group_stands_there_with_what_to_dial()
    {
        var passes = Demo.Plan().Steps.SelectMany(s => s.Asks.OfType<PassAsk>()).Single();
        var html = Card();
        Assert.Equal(passes.Settings.Length, Markup.Count(Markup.Between(html, "<ol class=\"dials\">", "</ol>"), "<li>"));
        Assert.All(passes.Settings, s => Assert.Contains($"<b class=\"number\">{s.Dial}</b>", html, StringComparison.Ordinal));
        Assert.Contains("<span class=\"native\">235 ± 12 N·m</span>", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_limit_of_the_sheet_is_on_the_card()
    {
        var limits = Demo.Plan().Steps.SelectMany(s => s.Asks).Count(a => a is ReadingAsk { Accept: not null } or WorkedAsk { Accept: not null });
        Assert.Equal(5, limits);
        Assert.Equal(limits, Markup.Count(Card(), "<p class=\"value\">"));
    }

    [Fact]
    public void A_thing_that_is_counted_twice_to_one_number_stands_there_once() =>
        Assert.Contains("<b class=\"number\">9</b> <b>friction disc</b><br><span class=\"small\">step 6, 7</span>", Card(), StringComparison.Ordinal);

    [Fact]
    public void A_device_says_when_it_comes_out()
    {
        var html = Card();
        Assert.Contains("<b class=\"number\">BC1</b> <b>bore cover</b><br><span class=\"small\">out: step 8</span>", html, StringComparison.Ordinal);
        Assert.Contains("<b class=\"number\">B1 B2</b> <b>blanking plate</b><br><span class=\"small\">stays in after this sheet</span>", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_written_on_it_so_no_record_can_be_left_on_it()
    {
        Assert.DoesNotContain("class=\"box", Card(), StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"cell", Card(), StringComparison.Ordinal);
    }

    [Fact]
    public void It_has_three_holes_and_the_wide_margin_of_a_clamp()
    {
        var style = Markup.Between(Card(), "<style>", "</style>");
        Assert.All(["@left-top{", "@left-middle{", "@left-bottom{"], hole => Assert.Equal(1, Markup.Count(style, hole)));
        Assert.Contains("margin-left:25mm", style, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_fixed_words_are_in_the_language_asked_for()
    {
        var html = FenderCard.Render(Demo.Plan(), Demo.Issued, Paper.A4, Words.Spanish);
        Assert.All(["Torques", "Recuentos", "Límites y paradas", "Puesto en la máquina", "Pare si"], w => Assert.Contains(w, html, StringComparison.Ordinal));
        Assert.All(["Counts", "Limits and", "In the machine", "Stop if"], w => Assert.DoesNotContain(w, html, StringComparison.Ordinal));
    }

    private static string Card() => FenderCard.Render(Demo.Plan(), Demo.Issued, Paper.A4, Words.English);
}
