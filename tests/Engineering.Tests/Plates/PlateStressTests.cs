using CsCheck;
using Witnessmark.Engineering.Plates;
using Witnessmark.Language.Quantities;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Plates;

/// <summary>
/// Theory of thin plates, round, simply supported, uniform pressure: greatest moment (3 + ν)/16 · p r² at the middle, stress 6 M/t² (from memory
/// of the textbooks). The three stresses were reckoned by hand for the demo's blank: 0.35 MPa, radius 25 mm, steel of 235 MPa.
/// </summary>
public class PlateStressTests
{
    [Theory]
    [InlineData("1.0 mm", 271, false)]
    [InlineData("1.5 mm", 120, true)]
    [InlineData("2.0 mm", 68, true)]
    public void A_blank_holds_from_one_and_a_half_millimetres(string thickness, double stress, bool holds)
    {
        var plate = Blank("0.35 MPa", "25 mm", thickness)!;
        Assert.Equal(stress, (double)plate.Stress.Value.Number, 0.5);
        Assert.Equal(156.7, (double)plate.Allowed.Value.Number, 0.05);
        Assert.Equal(holds, plate.Holds);
    }

    [Fact]
    public void The_stress_is_six_times_the_moment_over_the_square_of_the_thickness() =>
        Gen.Select(Gen.Int[1, 4000], Gen.Int[10, 400], Gen.Int[1, 50]).Where(g => 2 * g.Item3 <= 10 * g.Item2).Sample((kilopascals, radius, tenths) =>
        {
            var (p, r, t) = (kilopascals / 1000.0, (double)radius, tenths / 10.0);
            var plate = PlateStress.Of(Quantity.Of(kilopascals / 1000m, "MPa"), Quantity.Of(radius, "mm"), Quantity.Of(tenths / 10m, "mm"), Q("235 MPa"), 1.5m)!;
            var expected = 6 * (3.3 / 16 * p * r * r) / (t * t);
            return Math.Abs((double)plate.Stress.Value.Number - expected) <= 1e-9 * expected;
        });

    [Fact]
    public void Inches_and_psi_say_the_same() =>
        Assert.Equal(Blank("0.35 MPa", "25.4 mm", "2.54 mm")!.Stress.Value.Si, Blank("50.763 psi", "1 in", "0.1 in")!.Stress.Value.Si, 1e-3 * 42e6);

    [Theory]
    [InlineData("0 MPa", "25 mm", "2.0 mm")]
    [InlineData("0.35 kg", "25 mm", "2.0 mm")]
    [InlineData("0.35 MPa", "0 mm", "2.0 mm")]
    [InlineData("0.35 MPa", "25 mm", "0 mm")]
    [InlineData("0.35 MPa", "25 mm", "12.6 mm")]
    [InlineData("0.35 MPa", "25 mm", "0.002 mm")]
    public void Out_of_sense_or_too_thick_it_says_nothing(string pressure, string radius, string thickness) => Assert.Null(Blank(pressure, radius, thickness));

    [Theory]
    [InlineData(0.9)]
    [InlineData(10.1)]
    public void A_safety_below_one_is_none(double safety) => Assert.Null(PlateStress.Of(Q("0.35 MPa"), Q("25 mm"), Q("2 mm"), Q("235 MPa"), (decimal)safety));

    private static PlateStress? Blank(string pressure, string radius, string thickness) =>
        PlateStress.Of(Q(pressure), Q(radius), Q(thickness), Q("235 MPa"), 1.5m);
}
