using CsCheck;
using Witnessmark.Engineering.Formulas;
using Witnessmark.Engineering.Measuring;
using Witnessmark.Language.Quantities;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Formulas;

public class FormulaTests
{
    internal const string Clearance = "mean of cavity-depth - (sum of disc-thickness + sum of plate-thickness + sum of end-thickness)";

    internal static readonly Dictionary<string, Measured> Build = new(StringComparer.Ordinal)
    {
        ["cavity-depth"] = Measured.Of(Rows("86.19 86.20 86.21 mm"))!,
        ["disc-thickness"] = Measured.Of(Rows([.. Enumerable.Repeat("5.01 5.02 5.03 mm", 9)]))!,
        ["plate-thickness"] = Measured.Of(Rows([.. Enumerable.Repeat("3.17 3.17 3.17 mm", 8)]))!,
        ["end-thickness"] = Measured.Of(Rows("6.20 6.21 6.22 mm", "6.21 6.21 6.21 mm"))!,
        ["cavity of brake-stack"] = Measured.Of(Q("86.2 mm"))!,
        ["start-pressure"] = Measured.Of(Q("4.02 MPa"))!,
        ["end-pressure"] = Measured.Of(Q("3.90 MPa"))!,
        ["start-oil"] = Measured.Of(Q("24.0 °C"))!,
        ["end-oil"] = Measured.Of(Q("22.5 °C"))!,
        ["shim-thickness"] = Measured.Of(Rows("0.75 mm", "0.75 mm", "0.35 mm"))!,
        ["end-play"] = Measured.Of(Rows("0.31 0.31 0.31 mm"))!,
    };

    /// <summary>Source: new build of the demo scenario, worked by hand: 86.20 − 82.96 = 3.24.</summary>
    [Fact]
    public void The_running_clearance_of_the_demo_is_3_24()
    {
        var worked = Worked(Clearance);
        Assert.Equal(3.24m, worked.Value.Number);
        Assert.Equal("86.20 − (45.18 + 25.36 + 12.42) = 86.20 − 82.96 = 3.24 mm", worked.Line);
    }

    /// <summary>Source: hold test of the demo scenario, worked by hand: 0.12 − 0.072 = 0.048 MPa.</summary>
    [Fact]
    public void A_drop_in_pressure_is_cleared_of_what_cooling_took()
    {
        var worked = Worked("start-pressure - end-pressure - 0.048 MPa/degC x (start-oil - end-oil)");
        Assert.Equal(Q("0.048 MPa").Number, worked.Value.Number);
        Assert.Equal("4.02 MPa − 3.90 MPa − 0.048 MPa/°C × (24.0 °C − 22.5 °C) = 4.02 MPa − 3.90 MPa − 0.048 MPa/°C × 1.5 °C = 0.048 MPa", worked.Line);
    }

    /// <summary>Source: shim pack of the demo scenario, worked by hand: 1.85 − (0.31 − 0.10) = 1.64.</summary>
    [Fact]
    public void A_new_shim_pack_is_the_old_one_less_the_play_too_much() =>
        Assert.Equal(1.64m, Worked("sum of shim-thickness - (mean of end-play - 0.10 mm)").Value.Number);

    [Theory]
    [InlineData("least of disc-thickness", "5.01 mm")]
    [InlineData("most of disc-thickness", "5.03 mm")]
    [InlineData("spread of cavity-depth", "0.02 mm")]
    [InlineData("cavity of brake-stack - 82.96 mm", "3.24 mm")]
    [InlineData("cavity of brake-stack × 2", "172.4 mm")]
    [InlineData("2 x cavity of brake-stack", "172.4 mm")]
    [InlineData("cavity of brake-stack / 2", "43.1 mm")]
    [InlineData("-(cavity of brake-stack)", "-86.2 mm")]
    [InlineData("10 mm - 2 mm - 3 mm", "5 mm")]
    [InlineData("24 mm / 2 / 3", "4 mm")]
    [InlineData("3 mm/2", "1.5 mm")]
    [InlineData("1 mm + 2 mm x 3", "7 mm")]
    [InlineData("(1 mm + 2 mm) x 3", "9 mm")]
    [InlineData("1 in + 0.6 mm - 1 mm", "0.984251968503937 in")]
    [InlineData("4.0 MPa x 100 mm2", "400 N")]
    [InlineData("400 N / 100 mm2", "4 MPa")]
    [InlineData("50 % x 3 mm", "1.5 mm")]
    [InlineData("3 mm / 4 mm", "75 %")]
    [InlineData("3 cm3 x 2", "6 cm³")]
    [InlineData("2 x 3 cm3", "6 cm³")]
    [InlineData("120 L / 60 s", "120 L/min")]
    public void A_formula_comes_to_what_it_says(string formula, string result)
    {
        var expected = Q(result);
        var value = Worked(formula).Value;
        Assert.Equal(expected.Unit, value.Unit);
        Assert.Equal((double)expected.Number, (double)value.Number, 1e-9);
    }

    [Fact]
    public void The_result_can_be_rounded_to_what_is_printed()
    {
        var worked = Formula.Parse("mean of cavity-depth / 7").Value!.Evaluate(Value, Q("0.01 mm")).Value!;
        Assert.Equal("12.31 mm", worked.Value.ToString());
        Assert.Equal("86.20 / 7 = 12.31 mm", worked.Line);
    }

    [Fact]
    public void A_step_of_another_kind_rounds_nothing()
    {
        var fault = Formula.Parse("mean of cavity-depth / 7").Value!.Evaluate(Value, Q("1 bar")).Fault!;
        Assert.Equal("length cannot be rounded to 1 bar", fault.Says);
    }

    [Fact]
    public void In_words_it_is_printed_with_proper_signs() =>
        Assert.Equal(
            "mean of cavity depth − (sum of disc thickness + sum of plate thickness + sum of end thickness)",
            Formula.Parse(Clearance).Value!.InWords());

    [Fact]
    public void A_name_may_have_a_title_of_its_own() =>
        Assert.Equal("cavity of the brake stack × 2", Formula.Parse("cavity of brake-stack x 2").Value!.InWords(n => n == "cavity of brake-stack" ? "cavity of the brake stack" : null));

    [Fact]
    public void The_names_used_are_told_once_each_in_order() =>
        Assert.Equal(["b-b", "cavity of brake-stack", "a"], Formula.Parse("mean of b-b + cavity of brake-stack - (a + 2 x sum of b-b)").Value!.Names);

    [Fact]
    public void The_unit_is_known_before_anything_is_measured()
    {
        Assert.Equal("mm", Formula.Parse(Clearance).Value!.UnitOf(Unit).Value!.Symbol);
        Assert.Equal("MPa", Formula.Parse("start-pressure - 0.048 MPa/degC x (start-oil - end-oil)").Value!.UnitOf(Unit).Value!.Symbol);
        Assert.Equal("%", Formula.Parse("10 mm / (mean of cavity-depth - cavity of brake-stack)").Value!.UnitOf(Unit).Value!.Symbol);
    }

    [Fact]
    public void Sums_and_products_come_to_the_same_as_by_hand() =>
        Gen.Select(Gen.Int[1, 9999], Gen.Int[1, 9999], Gen.Int[1, 99], Gen.Int[1, 9999]).Sample((a, b, c, d) =>
        {
            var (x, y, z) = (a / 100m, b / 100m, d / 100m);
            var worked = Worked($"{x} mm - ({y} mm + {c} x {z} mm) / 4");
            return Math.Abs(worked.Value.Number - (x - ((y + (c * z)) / 4))) < 0.000000001m;
        });

    [Fact]
    public void Pieces_put_in_come_to_the_same_as_by_hand() =>
        Gen.Int[1, 9999].Array[1, 4].Array[1, 9].Sample(pieces =>
        {
            var measured = Measured.Of([.. pieces.Select(p => p.Select(n => Quantity.Of(n / 100m, "mm"))).Select(System.Collections.Immutable.ImmutableArray.ToImmutableArray)])!;
            var sum = Formula.Parse("sum of x1").Value!.Evaluate(_ => measured).Value!.Value.Number;
            return Math.Abs(sum - pieces.Sum(p => p.Average(n => n / 100m))) < 0.000000001m;
        });

    internal static Measured? Value(string name) => Build.GetValueOrDefault(name);

    internal static Worked<Quantity> Worked(string formula)
    {
        var parsed = Formula.Parse(formula);
        Assert.True(parsed.Ok, parsed.Fault?.Says);
        var worked = parsed.Value!.Evaluate(Value);
        Assert.True(worked.Ok, worked.Fault?.Says);
        return worked.Value!;
    }

    private static Unit? Unit(string name) => Value(name)?.Unit;
}
