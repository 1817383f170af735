using System.Globalization;
using System.Text.RegularExpressions;
using static Witnessmark.Rendering.Figures.StackSection;

namespace Witnessmark.Rendering.Tests.Figures;

public class StackSectionTests
{
    private const double Row = 9.9;

    private static readonly IReadOnlyList<IReadOnlyList<Piece>> Rows =
    [
        [new("E1", 6.20m, true, true), new("D1", 5.00m, false, null)],
        [new("P1", 3.20m, true, null), new("D2", 5.00m, false, null)],
        [new("E2", 6.20m, true, false)],
    ];

    [Fact]
    public void Thicknesses_are_drawn_to_one_scale()
    {
        var scale = Scale(Rows, Row);
        Assert.Equal([6.20 * scale, 5.00 * scale, 3.20 * scale, 5.00 * scale, 6.20 * scale], Parts().Select(p => p.Height), (a, b) => Math.Abs(a - b) < 0.001);
    }

    [Fact]
    public void Each_part_stands_beside_its_own_line()
    {
        var parts = Parts();
        Assert.All(new[] { (0, 0), (1, 0), (2, 1), (3, 1), (4, 2) }, p =>
        {
            Assert.True(parts[p.Item1].Y >= p.Item2 * Row);
            Assert.True(parts[p.Item1].Y + parts[p.Item1].Height <= (p.Item2 + 1) * Row);
        });
    }

    [Fact]
    public void Parts_do_not_overlap() =>
        Assert.All(Parts().Zip(Parts().Skip(1)), p => Assert.True(p.First.Y + p.First.Height < p.Second.Y));

    [Fact]
    public void Teeth_outside_and_inside_are_told_apart_by_place_and_hatch()
    {
        var (outer, inner) = (Parts()[0], Parts()[1]);
        Assert.True(outer.X < inner.X);
        Assert.Equal("#fff", outer.Fill);
        Assert.Equal("url(#s-hatch)", inner.Fill);
    }

    [Fact]
    public void The_faced_side_is_hatched_where_it_looks()
    {
        var svg = Draw("s", Rows, Row, "RING", "stack");
        var hatched = Regex.Matches(svg, "<rect x=\"0.4\" y=\"([\\d.]+)\"[^>]*url\\(#s-hatch\\)").Select(m => Number(m, 1)).ToList();
        var parts = Parts();
        Assert.Equal(2, hatched.Count);
        Assert.Equal(parts[0].Y, hatched[0], 3);
        Assert.Equal(parts[4].Y + (parts[4].Height / 2), hatched[1], 2);
    }

    [Fact]
    public void A_part_without_a_thickness_is_still_drawn() =>
        Assert.Contains("<rect", Draw("s", [[new("A1", null, true, null)]], Row, "END", "stack"), StringComparison.Ordinal);

    // whole parts only: the first rectangle of each, stroke 0.5
    private static List<(double X, double Y, double Height, string Fill)> Parts() =>
    [
        .. Regex.Matches(Draw("s", Rows, Row, "RING", "stack"), "<rect x=\"([\\d.]+)\" y=\"([\\d.]+)\" width=\"[\\d.]+\" height=\"([\\d.]+)\" fill=\"([^\"]+)\" stroke=\"#000\" stroke-width=\"0.5\"/>")
            .Select(m => (Number(m, 1), Number(m, 2), Number(m, 3), m.Groups[4].Value)),
    ];

    private static double Number(Match match, int group) => double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);
}
