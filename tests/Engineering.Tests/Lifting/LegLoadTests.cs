using CsCheck;
using Witnessmark.Engineering.Lifting;
using Witnessmark.Language.Quantities;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Lifting;

public class LegLoadTests
{
    /// <summary>A load table for riggers: 1000 lb on two legs is 577 lb a leg at 60° to the horizontal, 707 lb at 45°.</summary>
    [Theory]
    [InlineData("SL-01", "60 deg")]
    [InlineData("SL-02", "45 deg")]
    public void Two_legs_carry_what_the_published_table_says(string row, string angle) =>
        Assert.Equal((double)Published.Output(row).Number, (double)Leg("1000 lb", 2, angle).Mass.Value.Number, 0.5);

    /// <summary>Statics, reckoned by hand for the demo's hub of 312 kg: mass / (2 × sine of the angle).</summary>
    [Theory]
    [InlineData("60 deg", 180)]
    [InlineData("45 deg", 221)]
    [InlineData("30 deg", 312)]
    public void The_hub_hangs_in_two_legs(string angle, double kilograms) =>
        Assert.Equal(kilograms, (double)Leg("312 kg", 2, angle).Mass.Value.Number, 0.5);

    /// <summary>Geometry: at 30° to the horizontal sin is one half, so that each of two legs carries as much as the whole load.</summary>
    [Fact]
    public void At_thirty_degrees_each_leg_carries_the_whole_load() =>
        Assert.Equal(312, (double)Leg("312 kg", 2, "30 deg").Mass.Value.Number, 1e-9);

    /// <summary>US Navy NAVEDTRA 14081, figure 13-50: two of four legs can carry practically all.</summary>
    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    public void More_than_two_legs_count_as_two(int legs)
    {
        Assert.Equal(2, Leg("312 kg", legs, "60 deg").Carrying);
        Assert.Equal(Leg("312 kg", 2, "60 deg").Mass, Leg("312 kg", legs, "60 deg").Mass);
    }

    /// <summary>Statics: what the legs pull upward together is the weight.</summary>
    [Fact]
    public void The_upward_parts_of_the_legs_add_up_to_the_load() =>
        Gen.Select(Gen.Int[1, 60_000], Gen.Int[1, 2], Gen.Int[1, 90]).Sample((mass, legs, degrees) =>
        {
            var leg = LegLoad.Of(Quantity.Of(mass, "kg"), legs, Quantity.Of(degrees, "deg"))!;
            var upward = leg.Carrying * (double)leg.Force.Value.Number * Math.Cos((double)leg.ToVertical.Number * Math.PI / 180);
            return Math.Abs(upward - (mass * 9.80665)) < 1e-6 * mass;
        });

    [Fact]
    public void The_flatter_the_legs_the_more_each_carries() =>
        Gen.Select(Gen.Int[1, 60_000], Gen.Int[1, 89]).Sample((mass, degrees) =>
            LegLoad.Of(Quantity.Of(mass, "kg"), 2, Quantity.Of(degrees, "deg"))!.Mass.Value.Number
                > LegLoad.Of(Quantity.Of(mass, "kg"), 2, Quantity.Of(degrees + 1, "deg"))!.Mass.Value.Number);

    [Fact]
    public void One_leg_hangs_straight_and_carries_all() =>
        Assert.Equal((38m, 0m), (Leg("38 kg", 1, null).Mass.Value.Number, Leg("38 kg", 1, null).ToVertical.Number));

    [Theory]
    [InlineData("0 kg", 2, "60 deg")]
    [InlineData("43 kg", 0, "60 deg")]
    [InlineData("43 kg", 2, null)]
    [InlineData("43 kg", 2, "0 deg")]
    [InlineData("43 kg", 2, "0.99 deg")]
    [InlineData("43 kg", 2, "91 deg")]
    [InlineData("43 kg", 2, "-60 deg")]
    [InlineData("43 kg", 2, "60 mm")]
    [InlineData("43 mm", 2, "60 deg")]
    public void What_makes_no_sense_has_no_leg_load(string mass, int legs, string? angle) =>
        Assert.Null(LegLoad.Of(Q(mass), legs, angle is null ? null : Q(angle)));

    private static LegLoad Leg(string mass, int legs, string? angle) => LegLoad.Of(Q(mass), legs, angle is null ? null : Q(angle))!;
}
