using Witnessmark.Language.Quantities;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests;

public class FiguresTests
{
    [Theory]
    [InlineData("156.66825 mm²", 4, "156.7 mm²")]
    [InlineData("130.034 kN", 4, "130.0 kN")]
    [InlineData("97.5 kN", 4, "97.5 kN")]
    [InlineData("45 N·m", 3, "45 N·m")]
    [InlineData("1.0541 kN", 4, "1.054 kN")]
    [InlineData("0.0123456 kN", 3, "0.0123 kN")]
    [InlineData("234.0612 N·m", 3, "234 N·m")]
    [InlineData("12345.6 N·m", 3, "12346 N·m")]
    [InlineData("0 N·m", 3, "0 N·m")]
    [InlineData("-234.5 N·m", 3, "-235 N·m")]
    public void A_number_is_shown_with_as_many_figures_as_it_is_worth(string exact, int figures, string shown) =>
        Assert.Equal(shown, Q(exact).ToFigures(figures).ToString());

    [Theory]
    [InlineData(1.0174, 0, "102 %")]
    [InlineData(0.9474, 1, "94.7 %")]
    [InlineData(0.06, 0, "6 %")]
    public void A_share_is_shown_as_percent(double share, int decimals, string shown) => Assert.Equal(shown, Figures.Percent((decimal)share, decimals));

    [Theory]
    [InlineData("3.2449 mm", "0.01 mm", "3.24 mm")]
    [InlineData("3.245 mm", "0.01 mm", "3.25 mm")]
    [InlineData("-3.245 mm", "0.01 mm", "-3.25 mm")]
    [InlineData("236 N·m", "5 N·m", "235 N·m")]
    [InlineData("1 in", "0.1 mm", "25.4 mm")]
    public void A_value_is_rounded_to_the_nearest_step_half_away_from_zero(string value, string step, string rounded) =>
        Assert.Equal(rounded, Graduation.ToStep(Q(value), Q(step))!.Value.ToString());

    [Theory]
    [InlineData("3 mm", "0 mm")]
    [InlineData("3 mm", "-1 mm")]
    [InlineData("3 mm", "1 bar")]
    [InlineData("999999999999999999 km", "1 mm")]
    public void A_step_that_makes_no_sense_rounds_nothing(string value, string step) => Assert.Null(Graduation.ToStep(Q(value), Q(step)));

    [Fact]
    public void A_quantity_without_a_unit_is_refused_and_does_not_crash() => Assert.Null(Graduation.ToStep(default, default(Quantity)));
}
