using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Model;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Tightening;

public class PreloadScatterTests
{
    private static readonly TorqueWindow HubRetainer = TorqueWindow.For(Bolt("M20x2.5", "10.9"), 0.15m, HouseLimits.Default)!;

    /// <summary>Source: hub retainer worked by hand in the demo scenario: 0.746 of proof, 0.94 likely, 1.09 at worst.</summary>
    [Fact]
    public void The_hub_retainer_is_likely_at_94_and_at_worst_at_109_percent_of_proof()
    {
        var scatter = PreloadScatter.Of(HubRetainer, T("455 ± 25 N·m"), HouseLimits.Default)!;
        Assert.Equal(0.746m, Math.Round(scatter.Aimed, 3));
        Assert.Equal(0.94m, Math.Round(scatter.RootSumSquare.Value, 2));
        Assert.Equal(1.09m, Math.Round(scatter.WorstCase.Value, 2));
    }

    [Fact]
    public void A_tolerance_in_the_other_unit_counts_the_same()
    {
        var metric = PreloadScatter.Of(HubRetainer, new(Q("455 N·m"), Q("13.558179483314004 N·m")), HouseLimits.Default)!;
        var mixed = PreloadScatter.Of(HubRetainer, new(Q("455 N·m"), Q("10 lbf·ft")), HouseLimits.Default)!;
        Assert.Equal((double)metric.RootSumSquare.Value, (double)mixed.RootSumSquare.Value, 1e-12);
    }

    [Fact]
    public void A_wider_tolerance_scatters_more() =>
        Assert.True(
            PreloadScatter.Of(HubRetainer, T("455 ± 25 N·m"), HouseLimits.Default)!.RootSumSquare.Value
            > PreloadScatter.Of(HubRetainer, T("455 ± 10 N·m"), HouseLimits.Default)!.RootSumSquare.Value);

    [Fact]
    public void Without_any_scatter_the_aim_is_what_comes_out()
    {
        var exact = HouseLimits.Default with { FrictionScatter = 0, WrenchScatter = 0 };
        var scatter = PreloadScatter.Of(HubRetainer, T("455 N·m"), exact)!;
        Assert.Equal(scatter.Aimed, scatter.RootSumSquare.Value);
        Assert.Equal(scatter.Aimed, scatter.WorstCase.Value);
    }

    [Theory]
    [InlineData("0 N·m", 0.25)]
    [InlineData("455 bar", 0.25)]
    [InlineData("999999999999999999 N·m", 0.25)]
    [InlineData("455 N·m", 1)]
    [InlineData("455 N·m", -0.25)]
    public void What_makes_no_sense_has_no_scatter(string torque, double friction) =>
        Assert.Null(PreloadScatter.Of(HubRetainer, T(torque), HouseLimits.Default with { FrictionScatter = (decimal)friction }));
}
