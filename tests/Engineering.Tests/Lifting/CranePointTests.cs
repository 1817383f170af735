using Witnessmark.Engineering.Lifting;
using Witnessmark.Language.Quantities;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Lifting;

/// <summary>Chart and loads of the demo (its own numbers, no source).</summary>
public class CranePointTests
{
    private static readonly (Quantity, Quantity)[] Chart = [(Q("5.0 m"), Q("1200 kg")), (Q("3.0 m"), Q("2200 kg")), (Q("4.0 m"), Q("1600 kg"))];

    /// <summary>Wheel and tyre 760 kg with 35 kg of hook at 4.0 m: 795 of 1600 kg is half of it.</summary>
    [Fact]
    public void A_wheel_of_760_kg_hangs_within_three_quarters_of_the_chart()
    {
        var point = At("4.0 m", 0.75m)!;
        Assert.Equal(Q("1200 kg"), point.May.Value.RoundedTo(0));
        Assert.Equal("1600 × 75 % = 1200 kg", point.May.Line);
        Assert.True(point.Carries(Q("795 kg")));
        Assert.False(point.Carries(Q("1201 kg")));
    }

    [Fact]
    public void Between_two_radii_the_larger_one_counts() => Assert.Equal(Q("4.0 m"), At("3.2 m", 1)!.Charted.Radius);

    [Fact]
    public void A_radius_in_feet_is_found_on_a_chart_in_metres() => Assert.Equal(Q("4.0 m"), At("12 ft", 1)!.Charted.Radius);

    [Theory]
    [InlineData("5.1 m", 0.75)]
    [InlineData("0 m", 0.75)]
    [InlineData("-1 m", 0.75)]
    [InlineData("4.0 kg", 0.75)]
    [InlineData("4.0 m", 0)]
    [InlineData("4.0 m", 1.1)]
    public void Beyond_the_chart_or_out_of_sense_it_says_nothing(string radius, double share) => Assert.Null(At(radius, (decimal)share));

    private static CranePoint? At(string radius, decimal share) => CranePoint.Of([.. Chart], Q(radius), share);
}
