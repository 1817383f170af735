using System.Text.RegularExpressions;
using Witnessmark.Engineering.Printing;
using Witnessmark.Harness;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Tests.Checklist;

/// <summary>
/// What the measures of a sheet may not go below, for gloves, oil and sun, and who says so. Where no source is named it is common practice,
/// tried on a sheet that was filled in with a marker and photocopied.
/// </summary>
public partial class MeasuresTests
{
    private const string TriedOnPaper = "common practice, no source; tried on paper";
    private const string Degani = "A. Degani, On the Typography of Flight-Deck Documentation, NASA CR-177605, 1992";
    private const string OneIn200 = "FAA rule of height = distance / 200, from its abstract";
    private const string SquareCodes = "ISO/IEC 18004, from memory";

    private static readonly string Css = Resources.Text("site/sheet.css") + Resources.Text("site/card.css");

    // Liberation Sans 1.07.4, table OS/2: x-height and capital height in units of 2048
    private const double XHeight = 1082 / 2048.0;
    private const double CapitalHeight = 1409 / 2048.0;

    public static TheoryData<string, double, string> LeastMillimetres => new()
    {
        { "rule", 0.5, TriedOnPaper },
        { "box-rule", 0.5, TriedOnPaper },
        { "divider", 0.5, TriedOnPaper },
        { "caution-rule", 1, TriedOnPaper },
        { "warning-rule", 1.5, TriedOnPaper },
        { "box-height", 11, TriedOnPaper },
        { "reading", 25, TriedOnPaper },
        { "narrow", 15, TriedOnPaper },
        { "clock", 30, TriedOnPaper },
        { "total-box", 8, TriedOnPaper },
        { "cell-height", 8, TriedOnPaper },
        { "row", 12, TriedOnPaper },
        { "clip", 20, TriedOnPaper },
        { "clamp", 13, TriedOnPaper },
        { "card-clamp", 25, TriedOnPaper },
        { "clip-hole", 6, "ISO 838, from memory" },
        { "square-code", 22, SquareCodes },
        { "point", 1.5, TriedOnPaper },
    };

    public static TheoryData<string, double, string> LeastPoints => new()
    {
        { "floor", 11, TriedOnPaper },
        { "foot-line", 11, TriedOnPaper },
        { "small", 12, TriedOnPaper },
        { "body", 14, Degani },
        { "big", 18, OneIn200 },
        { "number", 18, OneIn200 },
        { "part", 18, OneIn200 },
        { "code", 18, OneIn200 },
        { "set-mark", 30, TriedOnPaper },
    };

    [Theory]
    [MemberData(nameof(LeastMillimetres))]
    public void A_glove_and_a_photocopy_need_at_least(string name, double millimetres, string source) =>
        Assert.True(Measure(name).Millimetres >= millimetres, $"{name} is {Measure(name).Millimetres} mm; {source}: {millimetres} mm");

    [Theory]
    [MemberData(nameof(LeastPoints))]
    public void An_arms_length_needs_at_least(string name, double points, string source) =>
        Assert.True(Measure(name) is { IsType: true } m && m.Value >= points, $"{name} is {Measure(name).Css} {source}: {points} pt");

    /// <summary>0.10 in, and a gap between lines of a quarter to a third of the size: NASA CR-177605.</summary>
    [Theory]
    [InlineData("body")]
    [InlineData("said")]
    public void Running_text_has_the_x_height_and_the_line_gap_of_a_flight_deck(string name)
    {
        Assert.InRange(Measure(name).Millimetres * XHeight, 2.5, 3.0);
        Assert.InRange(Measure(name + "-line").Value / Measure(name).Value, 1.25, 1.33);
    }

    /// <summary>600 mm from the eye / 200: the FAA's rule, from its abstract.</summary>
    [Fact]
    public void Capitals_of_the_smallest_running_text_are_read_at_600_millimetres() => Assert.InRange(Measure("small").Millimetres * CapitalHeight, 2.9, 4.5);

    [Fact]
    public void A_cell_of_the_ladder_is_struck_with_a_glove_on() =>
        Assert.True(Measure("ladder-row").Millimetres - (2 * Measure("ladder-pad").Millimetres) >= 8);

    /// <summary>Four modules on each side of a code of up to 37: ISO/IEC 18004, from memory.</summary>
    [Fact]
    public void The_square_code_has_its_quiet_zone() =>
        Assert.True(Measure("square-code-quiet").Millimetres / 2 >= 4 * Measure("square-code").Millimetres / (37 + 8));

    [Fact]
    public void Nothing_printed_is_smaller_than_the_floor_and_what_is_near_it_is_bold()
    {
        Assert.All(SheetMeasures.All.Where(m => m.IsType), m => Assert.True(m.Value >= 11, m.Css));
        var near = Rules().Matches(Css).Select(m => m.Value.Trim()).Where(r => r.Contains("font-size:var(--floor)", StringComparison.Ordinal)).ToList();
        Assert.True(near.Count > 3);
        // a cell is bold already
        Assert.All(near, r => Assert.True(r.Contains("font-weight:700", StringComparison.Ordinal) || r.StartsWith(".ask .cell", StringComparison.Ordinal), r));
    }

    [Fact]
    public void The_style_sheet_has_no_size_of_its_own()
    {
        Assert.DoesNotMatch(@"[\d.]+pt", Css);
        var borders = Borders().Matches(Css).Select(m => m.Value).ToList();
        Assert.True(borders.Count > 10);
        Assert.All(borders, b => Assert.DoesNotMatch("[1-9]", b));
        Assert.DoesNotMatch(@"(?<!-)(min-height|[{;]height):[^;}]*[1-9.]+mm", Css);
    }

    [Fact]
    public void Every_measure_is_used_and_every_variable_is_a_measure()
    {
        var used = Variables().Matches(Css).Select(m => m.Groups[1].Value).ToHashSet();
        var known = SheetMeasures.All.Select(m => m.Name).ToList();
        Assert.Equal(known.Count, known.Distinct().Count());
        Assert.Empty(used.Except(known).Except(["face"]));
        var code = string.Concat(Directory.EnumerateFiles(Repo.Path("src"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.EndsWith("SheetMeasures.cs", StringComparison.Ordinal) && !f.Contains("/obj/", StringComparison.Ordinal)).Select(File.ReadAllText));
        Assert.Empty(SheetMeasures.All.Where(m => !used.Contains(m.Name) && !Named(m).IsMatch(code)).Select(m => m.Name));
    }

    [Fact]
    public void The_sheet_carries_its_measures() => Assert.Contains("--body:14pt;", Demo.Sheet(), StringComparison.Ordinal);

    private static Measure Measure(string name) => SheetMeasures.All.Single(m => m.Name == name);

    private static Regex Named(Measure measure) =>
        new(@"SheetMeasures\." + string.Concat(measure.Name.Split('-').Select(w => char.ToUpperInvariant(w[0]) + w[1..])) + @"\b");

    [GeneratedRegex(@"[^{}]+\{[^{}]*\}")]
    private static partial Regex Rules();

    [GeneratedRegex(@"border(?!-radius)[a-z-]*:[^;}]+")]
    private static partial Regex Borders();

    [GeneratedRegex(@"var\(--([a-z-]+)\)")]
    private static partial Regex Variables();
}
