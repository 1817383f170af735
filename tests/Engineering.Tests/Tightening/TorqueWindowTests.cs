using CsCheck;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Model;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Tightening;

public class TorqueWindowTests
{
    private static readonly Gen<decimal> Diameter = Gen.Int[8, 39].Select(d => (decimal)d);

    private static readonly Gen<decimal> NutFactor = Gen.Int[8, 35].Select(k => k / 100m);

    /// <summary>Source: hub retainer worked by hand in the demo scenario: torque at proof 610, window 396 to 518 N·m.</summary>
    [Fact]
    public void The_window_of_the_hub_retainer_is_396_to_518_newton_metres()
    {
        var window = Window("M20x2.5", "10.9", 0.15m);
        Assert.Equal(203.2, window.ProofLoad.Value.In("kN"), 0.05);
        Assert.Equal(610, window.TProof.Value.In("N·m"), 0.5);
        Assert.Equal(396, window.Low.Value.In("N·m"), 0.5);
        Assert.Equal(518, window.High.Value.In("N·m"), 0.5);
    }

    /// <summary>Charts round to whole units of their own: half a unit either way, and as much again for their rounded areas.</summary>
    [Theory]
    [InlineData("TT-07", 1, "M12x1.75", 0.20, 0.70)]
    [InlineData("TT-10 M10 8.8", 0, "M10x1.5", 0.20, 0.75)]
    [InlineData("TT-10 M10 8.8", 1, "M10x1.5", 0.15, 0.75)]
    [InlineData("TT-10 M16 8.8", 0, "M16x2", 0.20, 0.75)]
    [InlineData("TT-10 M16 8.8", 1, "M16x2", 0.15, 0.75)]
    public void Targets_of_class_8_8_agree_with_published_charts(string id, int answer, string thread, double k, double fraction)
    {
        var published = Published.Output(id, answer);
        var window = TorqueWindow.For(Bolt(thread, "8.8"), (decimal)k, HouseLimits.Default, (decimal)fraction)!;
        Assert.Equal((double)published.Number, (double)window.Target.Value.In(published.Unit).Number, 1.0);
    }

    [Fact]
    public void The_preload_aimed_at_agrees_with_the_published_example() =>
        Assert.Equal(
            (double)Published.Output("TT-07").Number,
            TorqueWindow.For(Bolt("M12x1.75", "8.8"), 0.20m, HouseLimits.Default, 0.70m)!.Preload.Value.In("kN"),
            0.5);

    /// <summary>Source: row TT-11. The chart's 314 lbf·ft for M20 8.8 uses 580 MPa, which ISO 898-1 gives up to M16 only.</summary>
    [Fact]
    public void The_chart_that_misses_the_split_at_M16_is_not_followed() =>
        Assert.Equal(325, Window("M20x2.5", "8.8", 0.20m).Target.Value.In("lbf·ft"), 0.5);

    [Fact]
    public void A_thicker_bolt_takes_more_torque() =>
        Gen.Select(Diameter, NutFactor).Sample((d, k) => d >= 39 || At(d, "10.9", k) < At(d + 1, "10.9", k));

    [Fact]
    public void A_rougher_thread_takes_more_torque() =>
        Gen.Select(Diameter, NutFactor).Sample((d, k) => At(d, "10.9", k) < At(d, "10.9", k + 0.01m));

    [Fact]
    public void A_stronger_class_takes_more_torque() =>
        Gen.Select(Diameter, NutFactor).Sample((d, k) => At(d, "8.8", k) < At(d, "10.9", k) && At(d, "10.9", k) < At(d, "12.9", k));

    [Fact]
    public void The_target_lies_in_the_window_and_the_window_below_proof() =>
        Gen.Select(Diameter, NutFactor).Sample((d, k) =>
        {
            var w = Window($"M{d}x1", "10.9", k);
            return w.Low.Value.Number < w.Target.Value.Number && w.Target.Value.Number < w.High.Value.Number && w.High.Value.Number < w.TProof.Value.Number;
        });

    [Fact]
    public void Without_thread_class_or_nut_factor_there_is_no_window()
    {
        var whole = Group("M16x2", "10.9", 0.15m);
        Assert.NotNull(TorqueWindow.For(whole, HouseLimits.Default));
        Assert.Null(TorqueWindow.For(whole with { Thread = null }, HouseLimits.Default));
        Assert.Null(TorqueWindow.For(whole with { PropertyClass = null }, HouseLimits.Default));
        Assert.Null(TorqueWindow.For(whole with { NutFactor = null }, HouseLimits.Default));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.15)]
    [InlineData(15)]
    public void A_nut_factor_that_no_thread_has_gives_no_window(double k) =>
        Assert.Null(TorqueWindow.For(Bolt("M16x2", "10.9"), (decimal)k, HouseLimits.Default));

    private static decimal At(decimal d, string strength, decimal k) => Window($"M{d}x1", strength, k).TProof.Value.Number;

    private static TorqueWindow Window(string thread, string strength, decimal k) => TorqueWindow.For(Bolt(thread, strength), k, HouseLimits.Default)!;
}
