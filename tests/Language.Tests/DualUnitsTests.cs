using CsCheck;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Language.Tests;

/// <summary>Worked by hand: 1 lbf·ft is 1.3558179483314004 N·m, 1 in is 25.4 mm, 1 lb is 0.45359237 kg.</summary>
public sealed class DualUnitsTests
{
    private static readonly string[] Units = ["N·m", "lbf·ft", "mm", "in", "MPa", "psi", "kg", "lb", "L", "°C", "°F", "km/h", "kN", "t"];

    [Theory]
    [InlineData("235 N·m", "173 lbf·ft")]
    [InlineData("455 N·m", "336 lbf·ft")]
    [InlineData("680 N·m", "502 lbf·ft")] // 501.54
    [InlineData("80 N·m", "59 lbf·ft")]
    [InlineData("78 N·m", "58 lbf·ft")] // 57.53
    [InlineData("150 N·m", "111 lbf·ft")]
    [InlineData("45 N·m", "33 lbf·ft")]
    [InlineData("40 N·m", "30 lbf·ft")] // 29.50
    [InlineData("336 lbf·ft", "456 N·m")]
    [InlineData("5.00 mm", "0.1969 in")]
    [InlineData("4.6 mm", "0.181 in")]
    [InlineData("4.60 mm", "0.1811 in")]
    [InlineData("0.125 in", "3.18 mm")] // 3.175
    [InlineData("4.0 MPa", "580 psi")] // 580.15
    [InlineData("16 MPa", "2300 psi")] // 2321
    [InlineData("43 kg", "95 lb")] // 94.8
    [InlineData("61400 kg", "135364 lb")]
    [InlineData("12 t", "26000 lb")] // 26455
    [InlineData("8.5 L", "2.25 US gal")] // 2.2455
    [InlineData("50 °C", "122 °F")]
    [InlineData("-40 °C", "-40 °F")]
    [InlineData("0 mm", "0.00 in")]
    [InlineData("-0.5 mm", "-0.020 in")]
    public void The_other_unit_says_as_much_as_the_native_one(string native, string beside) =>
        Assert.Equal(beside, DualUnits.Beside(Read(native))?.ToString());

    [Theory]
    [InlineData("60 s")]
    [InlineData("45 deg")]
    [InlineData("75 %")]
    [InlineData("12405 h")]
    public void What_is_the_same_everywhere_has_nothing_beside_it(string native) => Assert.Null(DualUnits.Beside(Read(native)));

    [Theory]
    [InlineData("2.8 to 3.6 mm", "0.111 to 0.141 in")] // 0.11024 up, 0.14173 down
    [InlineData("4.92 to 5.08 mm", "0.1938 to 0.2000 in")] // 0.19370, 0.2 exactly
    [InlineData("below 4.60 mm", "below 0.1811 in")] // 0.18110
    [InlineData("above 0.10 mm", "above 0.0040 in")] // 0.00394
    [InlineData("up to 8.6 mm", "up to 0.338 in")] // 0.33858
    [InlineData("from 3.8 MPa", "from 560 psi")] // 551.1
    [InlineData("3.10 to below 3.15 mm", "0.1221 to below 0.1240 in")] // 0.12205, 0.12402
    [InlineData("0.0 MPa", "0 psi")]
    [InlineData("5 to 6 MPa", "730 to 870 psi")] // 725.2, 870.2: to hundreds nothing would be left
    [InlineData("70 to 340 N·m", "52 to 250 lbf·ft")] // 51.63, 250.77
    [InlineData("-10 to 120 degC", "14 to 248 °F")]
    public void Limits_are_rounded_inward(string native, string beside) =>
        Assert.Equal(beside, DualUnits.Beside(QuantityReader.Range(native).Value)?.ToString());

    [Theory]
    [InlineData("455 ± 25 N·m", "336 ± 18 lbf·ft")] // 335.59 ± 18.44
    [InlineData("235 ± 12 N·m", "173 ± 8 lbf·ft")] // 173.33 ± 8.85, less the 0.33
    [InlineData("40 ± 4 N·m", "30 ± 2 lbf·ft")] // 29.50 ± 2.95, less the 0.50
    [InlineData("5 ± 0.3 N·m", "3.7 ± 0.2 lbf·ft")] // to whole lbf·ft nothing would be left
    [InlineData("5.00 ± 0.08 mm", "0.1969 ± 0.0031 in")] // 0.19685 ± 0.00315
    [InlineData("50 ± 2 °C", "122 ± 3 °F")] // 3.6: a difference knows no offset
    [InlineData("455 N·m", "336 lbf·ft")]
    public void A_tolerance_is_never_wider_than_the_native_one(string native, string beside) =>
        Assert.Equal(beside, DualUnits.Beside(QuantityReader.Toleranced(native).Value)?.ToString());

    [Fact]
    public void A_difference_of_temperature_knows_no_offset()
    {
        Assert.Equal("18 °F", DualUnits.Beside(Read("10 °C"), difference: true)?.ToString());
        Assert.Equal("up to 18 °F", DualUnits.Beside(QuantityReader.Range("10 °C or less").Value, difference: true)?.ToString());
    }

    [Theory]
    [InlineData("455 N·m", "336 lbf·ft", true)]
    [InlineData("455 N·m", "342 lbf·ft", true)] // 463.7 N·m, 1.9 %
    [InlineData("455 N·m", "345 lbf·ft", false)] // 467.8 N·m, 2.7 %
    [InlineData("455 N·m", "455 J", false)]
    [InlineData("0 mm", "0 in", true)]
    [InlineData("21 °C", "70 °F", true)] // 21.1
    [InlineData("21 °C", "72 °F", false)] // 22.2
    [InlineData("-4 °C", "25 °F", true)] // -3.9
    public void Two_spellings_of_one_value_agree_within_two_per_cent(string a, string b, bool agree)
    {
        Assert.Equal(agree, DualUnits.Agree(Read(a), Read(b), 0.02m));
        Assert.Equal(agree, DualUnits.Agree(Read(b), Read(a), 0.02m));
    }

    [Fact]
    public void Every_value_inside_the_derived_range_is_inside_the_native_one() =>
        (from low in Written
         from width in Gen.Int[0, 5000]
         from unit in Gen.OneOf(Units)
         from lowInside in Gen.Bool
         from highInside in Gen.Bool
         from at in Gen.Int[0, 100]
         select (low, width, unit, lowInside, highInside, at))
        .Sample(c =>
        {
            var last = new decimal(1, 0, 0, false, c.low.Scale);
            var native = new QuantityRange(
                new Bound(Quantity.Of(c.low, c.unit), c.lowInside),
                new Bound(Quantity.Of(c.low + (c.width * last), c.unit), c.highInside));
            var derived = DualUnits.Beside(native)!.Value;
            var (bottom, top) = (derived.Low!.Value.Value, derived.High!.Value.Value);
            var reading = bottom with { Number = bottom.Number + ((top.Number - bottom.Number) * c.at / 100) };
            // one single value has no inside to round to
            return c.width == 0 || !derived.Contains(reading) || native.Contains(reading);
        });

    [Fact]
    public void Every_value_inside_the_derived_tolerance_is_inside_the_native_one() =>
        (from target in Written
         from off in Gen.Int[1, 500]
         from unit in Gen.OneOf(Units)
         from at in Gen.Int[0, 100]
         select (target, off, unit, at))
        .Sample(c =>
        {
            var last = new decimal(1, 0, 0, false, c.target.Scale);
            var native = new Toleranced(Quantity.Of(c.target, c.unit), Quantity.Of(c.off * last, c.unit));
            var derived = DualUnits.Beside(native)!.Value;
            var reading = derived.Low with { Number = derived.Low.Number + ((derived.High.Number - derived.Low.Number) * c.at / 100) };
            return QuantityRange.Between(native.Low, native.High).Contains(reading);
        });

    [Fact]
    public void At_least_half_of_every_window_is_left() =>
        Gen.Select(Written, Gen.Int[1, 5000], Gen.OneOf(Units)).Sample((low, width, unit) =>
        {
            var last = new decimal(1, 0, 0, false, low.Scale);
            var native = QuantityRange.Between(Quantity.Of(low, unit), Quantity.Of(low + (width * last), unit));
            var derived = DualUnits.Beside(native)!.Value;
            var left = derived.High!.Value.Value.Si - derived.Low!.Value.Value.Si;
            return left >= 0.499999 * (native.High!.Value.Value.Si - native.Low!.Value.Value.Si);
        });

    [Fact]
    public void Nothing_that_can_be_read_is_too_large_for_any_unit_beside_it() =>
        Gen.Select(Gen.Long[-999_999_999_999_999_999, 999_999_999_999_999_999], Gen.Byte[0, 18], Gen.OneOf(UnitTable.All.ToArray()))
        .Sample((digits, scale, unit) =>
        {
            var number = new Quantity(Decimal(digits, scale), unit);
            foreach (var other in UnitTable.All.Where(unit.SameKindAs))
                number.In(other);
            DualUnits.Beside(number);
            DualUnits.Beside(new Toleranced(number, number with { Number = new decimal(1, 0, 0, false, 18) }));
            DualUnits.Beside(QuantityRange.Between(number, number with { Number = number.Number + new decimal(1, 0, 0, false, 9) }));
        });

    private static Gen<decimal> Written => Gen.Select(Gen.Int[-100_000, 100_000], Gen.Byte[0, 4], (digits, scale) => Decimal(digits, scale));

    private static decimal Decimal(long digits, byte scale) => digits * new decimal(1, 0, 0, false, scale);

    private static Quantity Read(string text) => QuantityReader.Quantity(text).Value;
}
