using System.Text.RegularExpressions;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Rendering.Tests.Checklist;

/// <summary>
/// A message is the head of a block with all that it holds for; browsers repeat such a head on every page that the block
/// goes on to. What a page looks like is measured on the printed PDF.
/// </summary>
public partial class MessagesHoldTests
{
    [Fact]
    public void A_message_stands_over_every_step_to_the_end_of_its_section()
    {
        Assert.Equal(
            [
                "A dry disc burns in the first stops: 7 8 9 10 end",
                "A moving piston can crush fingers: 9 10 end",
                "The hung ring can drop or swing: 11 12 13 14 15 end",
                "Fingers can be crushed: 12 13 14 15 end",
            ],
            Reaches(Demo.Sheet()));
    }

    [Fact]
    public void A_message_of_a_common_part_ends_with_its_section()
    {
        var library = Demo.Read(
            ("common/wb-60.md", "5. **Snug all bolts**", "> **CAUTION: a slipping wrench can bruise hands** and knees.\n> - Stand braced.\n> - hazard: pinched-fingers\n\n5. **Snug all bolts**"),
            ("wheel-end/wb-40.md", "wrench = TW-340", "wrench = TW-340\n\n17. **Wipe the ring** clean."));
        var html = SheetPage.Render(Demo.Plan(library), Demo.Issued, Paper.A4, Words.English);
        Assert.Equal("A slipping wrench can bruise hands: 16.5 16.6 16.7 16.8 16.9", Reaches(html)[^1]);
        Assert.Contains("id=\"step-17\"", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_message_of_a_common_part_that_is_performed_twice_does_not_hold_in_between()
    {
        var library = Demo.Read(
            ("common/wb-60.md", "8. **Try every bolt**", "> **CAUTION: a slipping wrench can bruise hands** and knees.\n> - Stand braced.\n> - hazard: pinched-fingers\n\n8. **Try every bolt**"),
            ("wheel-end/wb-40.md", "wrench = TW-340", "wrench = TW-340\n\n17. **Wipe the ring** clean.\n\n18. **Tighten them once more.**\n    - perform: WB-60 group = backing-ring-bolts, wrench = TW-340"));
        var html = SheetPage.Render(Demo.Plan(library), Demo.Issued, Paper.A4, Words.English);
        Assert.Equal(["A slipping wrench can bruise hands: 16.8 16.9", "A slipping wrench can bruise hands: 18.8 18.9 end"], Reaches(html)[^2..]);
    }

    [Fact]
    public void A_message_before_the_heading_of_a_common_parts_section_is_printed_above_its_first_step()
    {
        var library = Demo.Read(("common/wb-60.md", "1. **Check the wrench.**",
            "> **CAUTION: a slipping wrench can bruise hands** and knees.\n> - Stand braced.\n> - hazard: pinched-fingers\n\n## Tighten\n\n1. **Check the wrench.**"));
        var html = SheetPage.Render(Demo.Plan(library), Demo.Issued, Paper.A4, Words.English);
        Assert.Equal("A slipping wrench can bruise hands: 16.1 16.2 16.4 16.5 16.6 16.7 16.8 16.9 end", Reaches(html)[^1]);
    }

    [Fact]
    public void A_screen_reader_hears_each_message_once() =>
        Assert.Equal(4, Markup.Count(Demo.Sheet(), "role=\"note\""));

    [Fact]
    public void On_screen_the_blocks_are_plain_and_only_paper_makes_heads_of_them()
    {
        var style = Markup.Between(Demo.Sheet(), "<style>", "</style>");
        Assert.Equal(style.IndexOf("table-header-group", StringComparison.Ordinal), style.LastIndexOf("table-header-group", StringComparison.Ordinal));
        Assert.Matches(@"@media print\{\s*\.reach\{display:table;[^}]*\}\s*\.warns\{display:table-header-group;break-inside:avoid;break-after:avoid\}\s*\.held\{display:table-row-group\}", style);
    }

    /// <summary>Nature of a message and the codes of the steps below it, in the order printed.</summary>
    private static List<string> Reaches(string html) =>
        [.. Heads().Matches(html).Select(head => $"{Nature().Match(html, head.Index).Groups[1].Value}: {string.Join(' ', Held(Block(html, head.Index)))}")];

    // from an opening tag to the one that closes it
    private static string Block(string html, int from)
    {
        var depth = 0;
        foreach (var tag in Divs().EnumerateMatches(html, from))
        {
            depth += html[tag.Index + 1] == '/' ? -1 : 1;
            if (depth == 0)
                return html[from..tag.Index];
        }
        throw new InvalidOperationException("a block is not closed");
    }

    private static IEnumerable<string> Held(string block) =>
        Steps().Matches(block).Select(s => s.Groups["code"] is { Success: true } code ? code.Value.Replace('-', '.') : "end");

    [GeneratedRegex("<div class=\"reach\">")]
    private static partial Regex Heads();

    [GeneratedRegex("<p><b>([^<]+)</b>")]
    private static partial Regex Nature();

    [GeneratedRegex("</?div[ >]")]
    private static partial Regex Divs();

    [GeneratedRegex("""<article [^>]*id="step-(?<code>[^"]+)"|<div class="keep close">""")]
    private static partial Regex Steps();
}
