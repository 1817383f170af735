using CsCheck;
using Witnessmark.Engineering.Lifting;
using Witnessmark.Language.Quantities;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Lifting;

/// <summary>Check values: a wheel end of 3550 kg at 1.5, reckoned by hand beside the demo's data (weight over area; no outside source).</summary>
public class StandLoadTests
{
    private static readonly StandLoad Load = StandLoad.Of(Q("3550 kg"), 1.5m)!;

    [Fact]
    public void Half_as_much_again_as_stands_there_comes_on_the_stand()
    {
        Assert.Equal("3550 × 1.5 = 5325 kg", Load.Mass.Line);
        Assert.Equal(52.2, (double)Load.Force.Value.Number, 0.05);
    }

    [Theory]
    [InlineData("0.4 m", 326)]
    [InlineData("0.6 m", 145)]
    public void A_pad_presses_with_the_weight_over_its_area(string side, double kilopascals) =>
        Assert.Equal(kilopascals, (double)Load.PressureUnder(Q(side))!.Value.Number, 0.5);

    [Fact]
    public void Twice_the_side_is_a_quarter_of_the_pressure() =>
        Gen.Int[100, 60_000].Select(Gen.Int[10, 500]).Sample((kilograms, centimetres) =>
        {
            var load = StandLoad.Of(Quantity.Of(kilograms, "kg"), 1)!;
            var (one, two) = (load.PressureUnder(Quantity.Of(centimetres, "cm"))!, load.PressureUnder(Quantity.Of(2 * centimetres, "cm"))!);
            return Math.Abs((one.Value.Number / two.Value.Number) - 4) < 1e-9m;
        });

    [Theory]
    [InlineData("0 kg", 1.5)]
    [InlineData("3550 mm", 1.5)]
    [InlineData("3550 kg", 0.9)]
    [InlineData("3550 kg", 11)]
    public void Out_of_sense_it_says_nothing(string mass, double transfer) => Assert.Null(StandLoad.Of(Q(mass), (decimal)transfer));

    [Theory]
    [InlineData("0 m")]
    [InlineData("0.0001 m")]
    [InlineData("0.6 kg")]
    public void A_pad_without_a_size_presses_with_nothing(string side) => Assert.Null(Load.PressureUnder(Q(side)));
}
