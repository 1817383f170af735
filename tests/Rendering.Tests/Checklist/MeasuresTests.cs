using System.Globalization;
using System.Text.RegularExpressions;
using Witnessmark.Rendering.Checklist.Asks;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Tests.Checklist;

/// <summary>Floors for gloves, oil and sun: 11 pt (bold), 0.5 mm rules, 8 mm boxes. Common practice, tried on the mock sheet.</summary>
public class MeasuresTests
{
    private static readonly string Css = Resources.Text("site/sheet.css");

    [Fact]
    public void No_text_is_smaller_than_11_points()
    {
        var sizes = Numbers(@"(?:font|font-size|--small|--floor|--big|--code|--body):[^;{}]*?([\d.]+)pt");
        Assert.True(sizes.Count > 10);
        Assert.All(sizes, s => Assert.True(s >= 11, $"{s} pt"));
    }

    [Fact]
    public void No_rule_is_thinner_than_half_a_millimetre()
    {
        var rules = Numbers(@"(?:border[a-z-]*|--rule|--box-rule|--thick):\s*([\d.]+)mm");
        Assert.True(rules.Count > 5);
        Assert.All(rules, r => Assert.True(r >= 0.5, $"{r} mm"));
    }

    [Theory]
    [InlineData("--box-height", 8)]
    [InlineData("--cell-height", 8)]
    [InlineData("--ladder-row", 8)]
    [InlineData("--reading", 25)]
    [InlineData("--narrow", 15)]
    [InlineData("--clock", 30)]
    public void Boxes_are_large_enough_for_a_glove(string name, double least) => Assert.True(Measure(name) >= least);

    [Fact]
    public void The_drawing_of_a_stack_keeps_step_with_its_cells() => Assert.Equal(Ladder.RowHeight, Measure("--ladder-row"));

    [Fact]
    public void The_clamp_has_its_margin_at_the_left() => Assert.Contains("margin:20mm 8mm 29mm 13mm", Css, StringComparison.Ordinal);

    private static double Measure(string name) => Numbers(Regex.Escape(name) + @":([\d.]+)mm").Single();

    private static List<double> Numbers(string pattern) =>
        [.. Regex.Matches(Css, pattern).Select(m => double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture))];
}
