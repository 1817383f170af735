namespace Witnessmark.Browser.Tests.Photocopy;

/// <summary>The copier itself: it loses what a copier loses and keeps what it keeps.</summary>
public sealed class CopierTests
{
    private const int Edge = 600;

    public static TheoryData<Copier> Both => [Copier.Lean, Copier.Fat];

    [Theory]
    [MemberData(nameof(Both))]
    public void A_grey_hairline_does_not_survive_and_a_rule_of_half_a_millimetre_does(Copier copier)
    {
        Assert.True(Share(copier, 0.1, 128) < 0.05, $"{Share(copier, 0.1, 128):P0} of a hairline is left");
        Assert.True(Share(copier, 0.5, 0) > 0.99, $"{Share(copier, 0.5, 0):P0} of a rule is left");
    }

    [Theory]
    [MemberData(nameof(Both))]
    public void A_light_grey_ground_is_gone(Copier copier)
    {
        var page = Raster.White(Edge, Edge);
        Array.Fill(page.Grey, (byte)230);
        var copy = copier.Twice(page, 1).Page;
        Assert.True(copy.Grey.Count(g => g == 0) < Edge * Edge / 100);
    }

    [Fact]
    public void A_lean_copy_has_less_ink_than_a_fat_one()
    {
        var page = Line(0.5, 0);
        Assert.True(Ink(Copier.Lean.Twice(page, 1).Page) < Ink(Copier.Fat.Twice(page, 1).Page));
    }

    [Fact]
    public void Two_copies_are_twice_as_askew_and_smaller_by_four_hundredths()
    {
        var way = Copier.Lean.Twice(Raster.White(Edge, Edge), 1).Way;
        var (ax, ay) = way.Of(0, 300);
        var (bx, by) = way.Of(600, 300);
        Assert.Equal(1.4, Math.Atan2(by - ay, bx - ax) * 180 / Math.PI, 0.001);
        Assert.Equal(0.9604, Math.Sqrt(((bx - ax) * (bx - ax)) + ((by - ay) * (by - ay))) / 600, 0.0001);
    }

    [Fact]
    public void The_way_back_leads_where_it_came_from()
    {
        var way = Way.About(100, 200, 13, 0.9).Then(Way.About(30, 40, -4, 1.1));
        var (x, y) = way.Of(17, 23);
        var (bx, by) = way.Back().Of(x, y);
        Assert.Equal(17, bx, 1e-9);
        Assert.Equal(23, by, 1e-9);
    }

    [Fact]
    public void The_same_seed_makes_the_same_copy()
    {
        var page = Line(0.5, 0);
        Assert.Equal(Copier.Fat.Twice(page, 7).Page.Grey, Copier.Fat.Twice(page, 7).Page.Grey);
        Assert.NotEqual(Copier.Fat.Twice(page, 7).Page.Grey, Copier.Fat.Twice(page, 8).Page.Grey);
    }

    private static double Share(Copier copier, double millimetres, byte grey)
    {
        var copied = copier.Twice(Line(millimetres, grey), 3);
        var points = Enumerable.Range(60, Edge - 120).ToList();
        return points.Count(x => copied.IsBlack(x, Edge / 2.0, (0, 1))) / (double)points.Count;
    }

    private static int Ink(Raster page) => page.Grey.Count(g => g == 0);

    // the edge pixels of a line are as grey as it covers them
    private static Raster Line(double millimetres, byte grey)
    {
        var page = Raster.White(Edge, Edge);
        var half = millimetres * Raster.PerMillimetre / 2;
        for (var y = 0; y < Edge; y++)
        {
            var covered = Math.Clamp(Math.Min(y + 0.5, (Edge / 2.0) + half) - Math.Max(y - 0.5, (Edge / 2.0) - half), 0, 1);
            for (var x = 0; x < Edge; x++)
                page.Grey[(y * Edge) + x] = (byte)Math.Round(255 - (covered * (255 - grey)));
        }
        return page;
    }
}
