using CsCheck;
using Witnessmark.Engineering.Measuring;
using Witnessmark.Language.Quantities;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Measuring;

public class JudgementTests
{
    private static readonly string[] DiscBands = ["thin: below 4.92 mm", "good: 4.92 to 5.08 mm", "thick: above 5.08 mm"];

    [Fact]
    public void Each_point_of_every_disc_is_judged()
    {
        var judged = Judgement.Of(Judged("each", "friction-disc", DiscBands), Rows("4.98 5.02 5.01 mm", "5.01 4.90 5.03 mm"))!;
        Assert.Equal(["good", "good", "good", "good", "thin", "good"], judged.Values.Select(v => v.Band));
        Assert.Equal(["good", "thin"], judged.Bands);
        Assert.Null(judged.Band);
    }

    [Fact]
    public void Without_a_word_every_point_is_judged() =>
        Assert.Equal(3, Judgement.Of(Judged(null, null, DiscBands), Rows("4.98 5.02 5.01 mm"))!.Values.Length);

    [Theory]
    [InlineData("least", "3.08 mm", "replace")]
    [InlineData("most", "3.21 mm", "reuse")]
    [InlineData("spread", "0.13 mm", "replace")]
    public void One_value_stands_for_all(string judge, string value, string band)
    {
        var judged = Judgement.Of(Judged(judge, "steel-plate", "replace: below 3.10 mm", "reuse: from 3.10 mm"), Rows("3.20 3.21 mm", "3.08 3.19 mm"))!;
        Assert.Equal(Q(value), Assert.Single(judged.Values).Value);
        Assert.Equal(band, judged.Band);
    }

    [Fact]
    public void The_mean_of_several_pieces_is_the_mean_of_their_means() =>
        Assert.Equal(4.5m, Judgement.Of(Judged("mean", "disc"), Rows("4.00 mm", "4.98 5.02 mm"))!.Values.Single().Value.Number);

    /// <summary>Points of a reading that is not of a part are things of their own: a pack of shims.</summary>
    [Fact]
    public void The_sum_of_a_shim_pack_is_the_sum_of_its_shims() =>
        Assert.Equal(1.63m, Judgement.Of(Judged("sum", null), Rows("0.75 0.75 0.13 mm"))!.Values.Single().Value.Number);

    [Fact]
    public void The_sum_over_pieces_takes_the_mean_of_each() =>
        Assert.Equal(10.02m, Judgement.Of(Judged("sum", "disc"), Rows("5.00 5.02 mm", "5.01 5.01 mm"))!.Values.Single().Value.Number);

    [Theory]
    [InlineData("3.09 mm", "replace")]
    [InlineData("3.10 mm", "short")]
    [InlineData("3.149 mm", "short")]
    [InlineData("3.15 mm", "reuse")]
    [InlineData("0.1245 in", "reuse")]
    public void Bands_meet_without_gap_or_overlap(string reading, string band) =>
        Assert.Equal(band, Judgement.Of(Judged("each", null, "replace: below 3.10 mm", "short: 3.10 to below 3.15 mm", "reuse: from 3.15 mm"), [[Q(reading)]])!.Band);

    [Fact]
    public void A_value_in_no_band_has_none()
    {
        var judged = Judgement.Of(Judged("each", null, "low: below 1 mm", "high: above 2 mm"), Rows("0.5 1.5 mm"))!;
        Assert.Equal(["low", null], judged.Values.Select(v => v.Band));
        Assert.Null(judged.Band);
        Assert.Equal(["low"], judged.Bands);
    }

    [Fact]
    public void A_spread_of_temperatures_is_a_difference()
    {
        var judged = Judgement.Of(Judged("spread", null, "even: 10 °C or less", "uneven: above 10 °C"), Rows("61 49 °C"))!;
        Assert.Equal("uneven", judged.Band);
        Assert.Equal("even", Judgement.Of(Judged("spread", null, "even: 10 °C or less", "uneven: above 10 °C"), Rows("130 117 °F"))!.Band);
    }

    [Fact]
    public void What_was_not_measured_is_not_judged()
    {
        Assert.Null(Judgement.Of(Judged("each", null), []));
        Assert.Null(Judgement.Of(Judged("each", "disc"), [[]]));
        Assert.Null(Judgement.Of(Judged("each", null), [[Q("5 mm"), Q("5 bar")]]));
        Assert.Null(Judgement.Of(Judged("median", null), [[Q("5 mm")]]));
        Assert.Null(Judgement.Of(Judged("each", null), [[Q("999999999999999999 mm")]]));
    }

    [Fact]
    public void Least_mean_and_most_come_in_order_and_the_spread_parts_them() =>
        Gen.Int[-100_000, 100_000].Array[1, 5].Array[1, 6].Sample(pieces =>
        {
            var measured = Measured.Of([.. pieces.Select(p => p.Select(n => Quantity.Of(n / 100m, "mm")).ToArray()).Select(p => System.Collections.Immutable.ImmutableArray.Create(p))])!;
            return measured.Least.Number <= measured.Mean.Number
                && measured.Mean.Number <= measured.Most.Number
                && measured.Spread.Number == measured.Most.Number - measured.Least.Number
                && Math.Abs(measured.Sum.Number - (measured.Mean.Number * pieces.Length)) < 0.000001m;
        });

    [Fact]
    public void Judging_each_finds_as_many_values_as_points_and_each_in_its_band() =>
        Gen.Int[480, 520].Array[1, 12].Sample(points =>
        {
            var item = Judged("each", null, DiscBands);
            var judged = Judgement.Of(item, [[.. points.Select(p => Quantity.Of(p / 100m, "mm"))]])!;
            return judged.Values.Length == points.Length
                && judged.Values.Zip(points).All(p => p.First.Band == (p.Second < 492 ? "thin" : p.Second <= 508 ? "good" : "thick"));
        });
}
