using System.Text.RegularExpressions;
using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Tests.Figures;

public class BoltCircleTests
{
    private const double Size = 70;

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(7)]
    [InlineData(12)]
    [InlineData(24)]
    public void As_many_bolts_are_drawn_as_the_data_says(int count)
    {
        var svg = BoltCircle.Draw("c", count, Size, "bolts", []);
        var heads = Regex.Count(svg, "<circle [^>]*fill=\"#fff\"");
        Assert.Equal(count, heads);
        Assert.Equal(Enumerable.Range(1, count).Select(i => $"{i}"), Regex.Matches(svg, "<text[^>]*>(\\d+)</text>").Select(m => m.Groups[1].Value));
    }

    [Theory]
    [InlineData(4)]
    [InlineData(12)]
    [InlineData(24)]
    public void Bolt_1_is_at_twelve_oclock_and_numbers_go_clockwise(int count)
    {
        var (x, y) = BoltCircle.Position(1, count, Size);
        Assert.Equal(Size / 2, x, 9);
        Assert.True(y < Size / 2);
        var quarter = BoltCircle.Position(1 + (count / 4), count, Size);
        Assert.True(quarter.X > Size / 2);
        Assert.Equal(Size / 2, quarter.Y, 9);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(10)]
    [InlineData(16)]
    public void Neighbours_are_equally_far_apart(int count)
    {
        var bolts = Enumerable.Range(1, count).Select(i => BoltCircle.Position(i, count, Size)).ToList();
        var gaps = bolts.Zip(bolts.Skip(1).Append(bolts[0]), (a, b) => Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2))).ToList();
        Assert.All(gaps, g => Assert.Equal(gaps[0], g, 9));
    }

    [Theory]
    [InlineData(12)]
    [InlineData(24)]
    [InlineData(36)]
    public void Heads_do_not_overlap(int count)
    {
        var svg = BoltCircle.Draw("c", count, Size, "bolts", []);
        var radius = double.Parse(Regex.Match(svg, " r=\"([\\d.]+)\" fill=\"#fff\"").Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
        var (a, b) = (BoltCircle.Position(1, count, Size), BoltCircle.Position(2, count, Size));
        Assert.True(Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2)) > 2 * radius);
    }

    [Fact]
    public void It_has_a_name_and_words_for_those_who_do_not_see_it() =>
        Assert.Contains("role=\"img\" aria-labelledby=\"c-t c-d\"><title id=\"c-t\">ring &amp; bolts</title><desc id=\"c-d\">1, 2, 3</desc>", BoltCircle.Draw("c", 3, Size, "ring & bolts", []), StringComparison.Ordinal);
}
