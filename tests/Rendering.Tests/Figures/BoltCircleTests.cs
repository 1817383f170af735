using Witnessmark.Language.Quantities;
using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Tests.Figures;

public class BoltCircleTests
{
    [Theory]
    [InlineData(1, 0)]
    [InlineData(4, 0)]
    [InlineData(7, 3)]
    [InlineData(12, 4)]
    [InlineData(24, 4)]
    [InlineData(60, 2)]
    public void As_many_bolts_are_drawn_as_the_data_says_each_with_its_passes(int count, int passes)
    {
        var sketch = Sketched(Plain(count) with { Passes = passes });
        var bolts = Enumerable.Range(1, count).SelectMany(bolt => Enumerable.Range(1, passes).Prepend(bolt)).Select(n => $"{n}");
        Assert.Equal(bolts, sketch.Texts.Select(t => t.What).Where(t => t.All(char.IsDigit)));
        Assert.Equal(count * (passes + 1), sketch.Named("circle").Count(c => c.Attribute("fill")?.Value == "#fff"));
    }

    [Theory]
    [InlineData(4)]
    [InlineData(12)]
    [InlineData(24)]
    public void Bolt_1_is_at_twelve_oclock_and_numbers_go_clockwise(int count)
    {
        var ring = Plain(count);
        var centre = BoltCircle.Size(ring) / 2;
        var (x, y) = BoltCircle.Position(ring, 1);
        Assert.Equal(centre, x, 9);
        Assert.True(y < centre);
        var quarter = BoltCircle.Position(ring, 1 + (count / 4));
        Assert.True(quarter.X > centre);
        Assert.Equal(centre, quarter.Y, 9);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(10)]
    [InlineData(16)]
    public void Neighbours_are_equally_far_apart(int count)
    {
        var bolts = Enumerable.Range(1, count).Select(i => BoltCircle.Position(Plain(count), i)).ToList();
        var gaps = bolts.Zip(bolts.Skip(1).Append(bolts[0]), Apart).ToList();
        Assert.All(gaps, g => Assert.Equal(gaps[0], g, 9));
    }

    [Theory]
    [InlineData(12)]
    [InlineData(24)]
    [InlineData(36)]
    [InlineData(60)]
    public void Heads_do_not_overlap(int count)
    {
        var ring = Plain(count);
        var widest = Sketched(ring).Named("circle").Where(c => c.Attribute("fill")?.Value == "#fff").Max(c => FigureCase.Number(c.Attribute("r")!.Value));
        Assert.True(Apart(BoltCircle.Position(ring, 1), BoltCircle.Position(ring, 2)) > 2 * (double)widest);
    }

    [Fact]
    public void Circle_and_heads_are_to_one_scale()
    {
        var ring = Plain(12) with { PitchCircle = FigureCase.Q("330 mm"), AcrossFlats = FigureCase.Q("24 mm") };
        var heads = Sketched(ring).Boxes("polygon").Skip(1).ToList();
        Assert.Equal(12, heads.Count);
        // a hexagon with a corner at each side is as high as it is across flats
        Assert.All(heads, h => Assert.Equal(24.0 / 330, h.Height / (2 * BoltCircle.Radius(ring)), 3));
    }

    [Theory]
    [InlineData(null, null, "not to scale")]
    [InlineData("330 mm", null, "pitch circle 330 mm heads not to scale")]
    [InlineData("330 mm", "24 mm", "pitch circle 330 mm")]
    [InlineData("330 mm", "200 mm", "pitch circle 330 mm heads not to scale")]
    [InlineData("13.00 in", "0.9375 in", "pitch circle 13.00 in")]
    [InlineData(null, "24 mm", "not to scale")]
    public void It_says_what_is_not_to_scale(string? pitch, string? flats, string said) =>
        Assert.Equal(said, string.Join(' ', Sketched(Plain(12) with { PitchCircle = Length(pitch), AcrossFlats = Length(flats) }).Texts.Select(t => t.What).Where(t => !t.All(char.IsDigit))).Replace('\u00A0', ' '));

    private static Quantity? Length(string? text) => text is null ? null : FigureCase.Q(text);

    [Fact]
    public void It_has_a_name_and_words_for_those_who_do_not_see_it() =>
        Assert.Contains(
            "role=\"img\" aria-labelledby=\"c-t c-d\"><title id=\"c-t\">Bolts clockwise, 1 at twelve o&#39;clock</title><desc id=\"c-d\">1, 2, 3</desc>",
            BoltCircle.Draw("c", Plain(3), Words.English),
            StringComparison.Ordinal);

    private static BoltedRing Plain(int count) => new(count, null, null, 0, []);

    private static Sketch Sketched(BoltedRing ring) => new(BoltCircle.Draw("c", ring, Words.English));

    private static double Apart((double X, double Y) a, (double X, double Y) b) => Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2));
}
