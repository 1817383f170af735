using System.Text.RegularExpressions;

namespace Witnessmark.Rendering.Tests.Figures;

/// <summary>What a page draws is what the data sheet says.</summary>
public sealed class DrawnFromTheLibraryTests
{
    private const string Wb40 = "procedures/wb-40.html";
    private const string Okr34 = "machines/okr-34.html";
    private const string Sheet = "machines/okr-34.yaml";
    private const string Truck = "tools/crane-truck.yaml";

    [Fact]
    public void Every_drawing_of_the_demo_is_inside_its_paper_and_has_a_name_of_its_own()
    {
        foreach (var page in new[] { Wb40, Okr34 })
        {
            var drawings = SiteDrawings.Of(SiteDrawings.Page(page));
            Assert.NotEmpty(drawings);
            foreach (var (name, sketch) in drawings)
            {
                Assert.True(sketch.All.All(b => b.Inside(sketch.View)), name);
                Assert.False(sketch.Texts.SelectMany((a, i) => sketch.Texts.Skip(i + 1).Where(a.Overlaps)).Any(), name);
            }
        }
    }

    [Fact]
    public void The_ring_hangs_on_the_sling_of_the_truck() =>
        Assert.Contains("43 / (2 × cos 30°) = 24.8 kg", Texts("sling-11", SiteDrawings.Page(Wb40)));

    [Theory]
    [InlineData("    angle: 60 deg\n", "")]
    [InlineData("    gear: sling-2leg\n", "    gear: sling-of-nobody\n")]
    [InlineData("    angle: 60 deg\n", "    angle: 0 deg\n")]
    public void A_sling_of_which_too_little_is_known_is_not_drawn(string from, string to) =>
        Assert.DoesNotContain("sling-11", SiteDrawings.Of(SiteDrawings.Page(Wb40, (Sheet, from, to))).Keys);

    [Fact]
    public void The_stack_has_its_nineteen_parts_its_facings_and_its_clearance()
    {
        var texts = Texts("stack-9", SiteDrawings.Page(Wb40));
        Assert.Contains("1 · E1 end plate 6.20 mm, facing to PISTON", texts);
        Assert.Contains("19 · E2 end plate 6.20 mm, facing to RING", texts);
        Assert.Contains("clearance 2.8 to 3.6 mm", texts);
        Assert.Equal(19, texts.Count(t => t.Contains(" · ", StringComparison.Ordinal)));
        Assert.Equal(texts, Texts("stack-no-1", SiteDrawings.Page(Okr34)));
    }

    [Fact]
    public void A_wrench_without_an_adapter_is_not_drawn() =>
        Assert.DoesNotContain("adapter-16-6", SiteDrawings.Of(SiteDrawings.Page(Wb40)).Keys);

    [Fact]
    public void An_adapter_is_drawn_with_what_to_dial_through_it()
    {
        var page = SiteDrawings.Page(
            Wb40,
            (Truck, "    length: 0.75 m\n", "    length: 0.75 m\n  crow-foot-24:\n    kind: adapter\n    extension: 60 mm\n"),
            ("common/wb-60.md", "    - tool: {wrench}\n    - time: 8 to 20 min", "    - tool: {wrench}, crow-foot-24\n    - time: 8 to 20 min"));
        Assert.Contains("235 N·m × 0.75 / (0.75 + 0.06) = 218 N·m", Texts("adapter-16-6", page));
        Assert.Contains("Dial 220 N·m, bolt gets 238 N·m", Texts("adapter-16-6", page));
    }

    [Fact]
    public void A_group_that_says_its_circle_is_drawn_to_scale_on_both_pages()
    {
        var without = (Sheet, "    pitch-circle: 330 mm\n    across-flats: 24 mm\n", "");
        Assert.Contains("330 mm", Texts("bolts-16-6", SiteDrawings.Page(Wb40)));
        Assert.Contains("330 mm", Texts("bolts-no-1", SiteDrawings.Page(Okr34)));
        Assert.Contains("not to scale", Texts("bolts-16-6", SiteDrawings.Page(Wb40, without)));
    }

    [Fact]
    public void Shims_are_drawn_as_the_pack_of_the_data_sheet_from_the_sizes_in_stock() =>
        Assert.Equal(["1.85 mm", "S1 0.75 mm", "S2 0.75 mm", "S3 0.25 mm", "S4 0.10 mm", "0.75 + 0.75 + 0.25 + 0.10 = 1.85 mm"], Texts("shims-no-1", SiteDrawings.Page(Okr34)));

    [Theory]
    [InlineData("as-built: 1.85 mm", "as-built: 1.84 mm", "up to 5 pieces of the sizes in stock do not make 1.84 mm")]
    [InlineData("    as-built: 1.85 mm\n", "", "nothing says how thick the pack was as built")]
    [InlineData("    thicker-is: looser\n", "", "sizes, direction or play do not say enough")]
    public void A_pack_that_is_not_known_is_not_drawn_and_the_page_says_why(string from, string to, string why)
    {
        var page = SiteDrawings.Page(Okr34, (Sheet, from, to));
        Assert.DoesNotContain("shims-no-1", SiteDrawings.Of(page).Keys);
        Assert.Contains(why, page);
    }

    [Theory]
    [InlineData("plausible: 0.00 to 0.60 mm ", "plausible: from 0.00 mm ")]
    [InlineData("plausible: 0.00 to 0.60 mm ", "plausible: 0.0000 to 0.6000 mm ")]
    public void Plays_that_nobody_could_read_through_are_not_listed_and_the_page_says_so(string from, string to) =>
        Assert.Contains("is open at one end or has too many steps", SiteDrawings.Page(Okr34, (Sheet, from, to)));

    [Theory]
    [InlineData("0.27 to 0.33", "1.63", "2 × 0.75, 1 × 0.13", "0.05 to 0.11")]
    [InlineData("0.05 to 0.15", "1.85", "as it was", "0.05 to 0.15")]
    public void A_mechanic_finds_his_row(params string[] cells) =>
        Assert.Contains(string.Join('|', cells), Rows(SiteDrawings.Page(Okr34)));

    [Fact]
    public void A_play_without_a_pack_says_what_lies_next_to_it() =>
        Assert.Contains("0.01|none: 1.89 to 1.99 mm is needed; up to 4 pieces make 1.88 or 2.00 mm", Rows(SiteDrawings.Page(Okr34, (Sheet, "most: 5   ", "most: 4   "))));

    /// <summary>Cells of every row of every table, with | between them.</summary>
    private static List<string> Rows(string page) =>
        [.. Regex.Matches(page, "<tr[^>]*>(.*?)</tr>").Select(r => string.Join('|', Regex.Matches(r.Groups[1].Value, "<t[hd][^>]*>(.*?)</t[hd]>").Select(c => c.Groups[1].Value.Replace('\u00A0', ' '))))];

    private static List<string> Texts(string name, string page) => [.. SiteDrawings.Of(page)[name].Texts.Select(t => t.What.Replace('\u00A0', ' '))];
}
