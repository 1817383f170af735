using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Tests.Figures;

/// <summary>Drawings that a mechanic could measure say the truth.</summary>
public sealed class TrueToScaleTests
{
    private const double Close = 0.01;

    [Fact]
    public void Parts_of_a_stack_are_as_thick_as_their_thickness_and_the_clearance_is_open_at_the_far_end()
    {
        var sketch = Sketched("stack-of-the-brake");
        // the wall, the near end, then the parts without their linings, the far end
        var bars = sketch.Boxes("rect").Where(r => r.What.Contains("fill=\"#000\"", StringComparison.Ordinal)).ToList();
        var parts = sketch.Boxes("rect").Where(r => r.What.Contains("stroke-width=\"0.5\"", StringComparison.Ordinal)).Skip(1).ToList();
        var scale = parts[0].Height / 6.20;
        Assert.Equal([6.20, 5.00, 3.20, 5.00, 3.20, 5.00, 6.20], parts.Select(p => p.Height / scale), (a, b) => Math.Abs(a - b) < Close);
        Assert.All(parts.Zip(parts.Skip(1)), p => Assert.Equal(p.First.Bottom, p.Second.Y, 2));
        Assert.Equal(3.2, (bars[1].Y - parts[^1].Bottom) / scale, Close);
    }

    [Theory]
    [InlineData("shims-three")]
    [InlineData("shims-many-thin")]
    public void Shims_are_as_thick_as_they_say_and_their_sum_is_bracketed(string name)
    {
        var pack = Drawn.Pack(FigureCase.Read(name));
        var sketch = Sketched(name);
        var scale = ShimStack.Scale(pack);
        Assert.Equal(pack.Pieces.Select(p => p.Thickness.In("mm")), sketch.Boxes("rect").Select(r => r.Height / scale), (a, b) => Math.Abs(a - b) < Close);
        Assert.Equal(pack.Sum.Value.In("mm"), sketch.Boxes("polyline").First().Height / scale, Close);
    }

    [Fact]
    public void A_trend_ends_at_its_last_reading()
    {
        var sketch = Sketched("wear-of-a-disc");
        var last = sketch.Boxes("rect").Single();
        var trend = sketch.Boxes("polyline").Single(p => p.What.Split(',').Length == 5 && p.What.Contains("stroke-width=\"0.5\"", StringComparison.Ordinal));
        Assert.Equal(last.X + (last.Width / 2), trend.Right, 2);
        // square beyond the limit, round before it
        Assert.Equal(3, sketch.Named("circle").Count());
    }

    [Fact]
    public void Equal_hours_are_equally_far_apart()
    {
        var points = Sketched("wear-of-a-disc").Boxes("circle").Select(c => c.X).ToList();
        Assert.Equal((10850.0 - 9600) / (11700 - 10850), (points[1] - points[0]) / (points[2] - points[1]), 0.005);
    }

    [Theory]
    [InlineData("adapter-in-line", 410, 200, 700)]
    [InlineData("adapter-slanting", 220, 100, 300)]
    public void The_pointer_stands_at_the_setting(string name, double dial, int from, int to)
    {
        var sketch = Sketched(name);
        var (a, b) = (Middle(sketch.Texts.Single(t => t.What == $"{from}")), Middle(sketch.Texts.Single(t => t.What == $"{to}")));
        var pointer = Middle(sketch.Boxes("polygon").Last());
        Assert.Equal(dial, from + ((pointer - a) / (b - a) * (to - from)), 0.5);
    }

    [Theory]
    [InlineData("adapter-in-line", 120.0 / 1100)]
    [InlineData("adapter-folded-back", 150.0 / 750)]
    public void L_and_E_are_to_one_scale(string name, double share)
    {
        // each length is a line between two short ones
        var lengths = Sketched(name).Boxes("polyline").Where(p => p.Height == 0 && p.What.Contains("stroke-width=\"0.5\"", StringComparison.Ordinal)).Take(2).ToList();
        Assert.Equal(share, lengths[1].Width / lengths[0].Width, Close);
    }

    [Theory]
    [InlineData("sling-two-legs", 60)]
    [InlineData("sling-four-legs-flat", 30)]
    public void Legs_stand_at_the_angle_that_is_told(string name, double degrees)
    {
        var leg = Sketched(name).Boxes("polyline").Where(p => p.What.Contains("stroke-width=\"1\"", StringComparison.Ordinal)).ToList();
        Assert.Equal(2, leg.Count);
        Assert.All(leg, l => Assert.Equal(degrees, Math.Atan2(l.Height, l.Width) * 180 / Math.PI, 0.05));
    }

    private static double Middle(Box box) => box.X + (box.Width / 2);

    private static Sketch Sketched(string name) => new(Drawn.Of(FigureCase.Read(name)));
}
