using Witnessmark.Engineering.Shims;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Shims;

public class ShimTableTests
{
    private static readonly ShimSetting Hub = new(
        ShimStock.Of([Q("0.05 mm"), Q("0.10 mm"), Q("0.13 mm"), Q("0.25 mm"), Q("0.50 mm"), Q("0.75 mm")], 4)!, true, R("0.05 to 0.15 mm"), Q("0.10 mm"));

    [Fact]
    public void Every_play_stands_in_one_row_and_rows_follow_each_other()
    {
        var rows = ShimTable.Of(Hub, Q("1.85 mm"), R("0.00 to 0.60 mm"));
        Assert.Equal(0.00m, rows[0].From.Number);
        Assert.Equal(0.60m, rows[^1].To.Number);
        Assert.All(rows.Zip(rows.Skip(1)), pair => Assert.Equal(pair.First.To.Number + 0.01m, pair.Second.From.Number));
        Assert.All(rows.Where(r => r.Choice.Pack is not null), r => Assert.True(Hub.Play.Contains(r.Choice.Pack!.Play.Value) && Hub.Play.Contains(r.LastPlay!.Value)));
    }

    [Fact]
    public void A_play_in_its_window_keeps_the_old_pack()
    {
        var stays = Assert.Single(ShimTable.Of(Hub, Q("1.85 mm"), R("0.00 to 0.60 mm")), r => r.Stays);
        Assert.Equal((0.05m, 0.15m), (stays.From.Number, stays.To.Number));
    }

    [Theory]
    [InlineData("0.0000 to 0.6000 mm")]
    [InlineData("from 0.10 mm")]
    [InlineData("1 to 2 N·m")]
    public void What_makes_no_table_is_refused_by_an_empty_one(string plausible) =>
        Assert.Empty(ShimTable.Of(Hub, Q("1.85 mm"), R(plausible)));
}
