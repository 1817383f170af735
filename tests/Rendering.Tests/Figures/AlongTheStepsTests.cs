namespace Witnessmark.Rendering.Tests.Figures;

/// <summary>Crew, states and decisions, as drawn and as filled from the library.</summary>
public sealed class AlongTheStepsTests
{
    private const string Wb40 = "procedures/wb-40.html";
    private const string Source = "wheel-end/wb-40.md";
    private const double Close = 0.05;

    [Fact]
    public void Bars_are_as_long_as_their_minutes_and_stand_below_their_role()
    {
        var crew = Drawn.Crew(FigureCase.Read("crew-of-two"));
        var sketch = Sketched("crew-of-two");
        // without the three of the legend
        var bars = sketch.Boxes("rect").Where(r => r.Width > 10).ToList();
        var first = bars[0];
        Assert.Equal(crew.Steps.Sum(s => s.Doers.Length + (s.Checker is null ? 0 : 1)), bars.Count);
        // a hair of white is left out at both ends of a bar
        Assert.Equal(12.0 / 6, (bars[1].Height + 0.4) / (first.Height + 0.4), Close);
        var heads = sketch.Texts.Where(t => crew.Roles.Contains(t.What)).ToDictionary(t => t.What, t => t.X + (t.Width / 2));
        Assert.Equal(heads["mechanic"], first.X + (first.Width / 2), Close);
        var oiling = bars[4];
        Assert.Equal(heads["helper"], oiling.X + (oiling.Width / 2), Close);
    }

    [Fact]
    public void Work_together_is_black_and_tied_and_a_check_is_hatched()
    {
        var rects = Sketched("crew-of-two").Boxes("rect").ToList();
        Assert.Equal(2, rects.Count(r => r.Width > 10 && r.What.Contains("url(#crew-of-two-hatch)", StringComparison.Ordinal)));
        // two steps of two; the tie of every one of the four that two people share; one step without a time
        Assert.Equal(4 + 1, rects.Count(r => r.Width > 10 && r.What.Contains("fill=\"#000\"", StringComparison.Ordinal)));
        Assert.Equal(4, rects.Count(r => r.Height < 1.5 && r.Width is > 7.9 and < 8.1));
    }

    [Fact]
    public void A_device_is_in_from_the_step_that_places_it_to_the_step_that_takes_it_out()
    {
        var sketch = Sketched("states-of-the-stack");
        var studs = BarOf(sketch, "guide studs G1 G2");
        Assert.InRange(Middle(sketch, "1"), studs.X, studs.Right);
        Assert.InRange(Middle(sketch, "15"), studs.X, studs.Right);
        Assert.True(Middle(sketch, "16") > studs.Right);
        var fitted = BarOf(sketch, "brake stack fitted");
        Assert.True(Middle(sketch, "8") < fitted.X && Middle(sketch, "10") > fitted.Right);
    }

    [Theory]
    [InlineData("decision-on-the-discs")]
    [InlineData("decision-by-bands")]
    public void Every_outcome_has_its_box_and_stops_are_white_on_black(string name)
    {
        var decision = Drawn.Asked(FigureCase.Read(name));
        var boxes = Sketched(name).Boxes("rect").Skip(1).ToList();
        Assert.Equal(decision.Branches.Select(b => b.Stops), boxes.Select(b => b.What.Contains("fill=\"#000\"", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_demo_shows_its_devices_and_what_becomes_of_its_parts()
    {
        var texts = Texts("states-no-1", SiteDrawings.Page(Wb40));
        string[] rows =
        [
            "start lock L1 L2", "guide studs G1 G2", "bore cover BC1", "support on stand", "brake stack out", "brake stack fitted", "brake stack verified",
            "backing ring, on the hook", "backing ring fitted", "backing ring bolts snug", "backing ring bolts torqued",
        ];
        Assert.Empty(rows.Except(texts));
    }

    [Fact]
    public void A_step_that_may_be_left_out_leaves_both_values_standing()
    {
        var page = SiteDrawings.Page(Wb40, (Source, "    - fit: backing-ring\n", "    - fit: backing-ring\n    - leaves: piston = loose\n    - only-if: disc-thickness = good\n"));
        Assert.Contains("piston fitted or loose", Texts("states-no-1", page));
    }

    [Fact]
    public void The_demo_shows_who_works_when()
    {
        var texts = Texts("crew-no-1", SiteDrawings.Page(Wb40));
        Assert.Contains("9 Stack from the piston out, 20 min", texts);
        Assert.Contains("16.6 Tighten pass by pass, 20 min", texts);
        Assert.Contains("helper", texts);
    }

    [Fact]
    public void A_part_without_times_has_no_bars() =>
        Assert.DoesNotContain("crew-no-1", SiteDrawings.Of(SiteDrawings.Page(
            Wb40, [.. SiteDrawings.Lines(Source, "    - time: ").Concat(SiteDrawings.Lines("common/wb-60.md", "    - time: "))])).Keys);

    [Fact]
    public void A_reading_that_stops_the_step_shows_its_bands()
    {
        var texts = Texts("decision-1-2", SiteDrawings.Page(Wb40));
        Assert.Contains("below 4.92 mm", texts);
        Assert.Contains("go on with step 3", texts);
        Assert.Contains("stop: wrong part or swarf", texts);
    }

    [Fact]
    public void A_decision_leads_to_the_steps_that_are_done_only_then()
    {
        var page = SiteDrawings.Page(
            Wb40,
            (Source, "    - stop-if: running-clearance = outside\n", "    - decide: discs\n    - outcome: replace when disc-thickness = thin or thick or plate-thickness = replace\n    - outcome: reuse otherwise\n"),
            (Source, "    - count: friction-disc = 9\n    - tools: oil-can\n", "    - count: friction-disc = 9\n    - only-if: discs = replace\n"));
        var drawn = SiteDrawings.Of(page).Where(d => d.Value.Texts.Any(t => t.What == "discs")).ToList();
        var texts = Assert.Single(drawn).Value.Texts.Select(t => t.What).ToList();
        Assert.Contains("step 7", texts);
        Assert.Contains("go on with step 6", texts);
        Assert.Contains("otherwise", texts);
    }

    private static Box BarOf(Sketch sketch, string row)
    {
        var y = sketch.Texts.Single(t => t.What == row);
        return sketch.Boxes("rect").Single(r => r.X > y.Right && r.Y > y.Y - 1 && r.Bottom < y.Bottom + 1);
    }

    private static double Middle(Sketch sketch, string number) => sketch.Texts.First(t => t.What == number) is var text ? text.X + (text.Width / 2) : 0;

    private static List<string> Texts(string name, string page) => [.. SiteDrawings.Of(page)[name].Texts.Select(t => t.What.Replace('\u00A0', ' '))];

    private static Sketch Sketched(string name) => new(Drawn.Of(FigureCase.Read(name)));
}
