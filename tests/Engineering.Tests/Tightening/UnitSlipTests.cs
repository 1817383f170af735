using CsCheck;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Model;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Tightening;

/// <summary>Source: demo scenario, worked by hand: 455 dialled on a lbf·ft scale is 617 N·m, 101 % of proof; 336 on a N·m scale is 55 %.</summary>
public class UnitSlipTests
{
    private static readonly TorqueWindow HubRetainer = TorqueWindow.For(Bolt("M20x2.5", "10.9"), 0.15m, HouseLimits.Default)!;
    private static readonly TorqueWindow BackingRing = TorqueWindow.For(Bolt("M16x2", "10.9"), 0.15m, HouseLimits.Default)!;

    /// <summary>Wide enough for newton metres and pound-feet of one number.</summary>
    private static readonly TorqueWindow Wide =
        TorqueWindow.For(Bolt("M16x2", "10.9"), 0.15m, HouseLimits.Default with { TorqueWindow = (0.50m, 0.95m) })!;

    [Fact]
    public void Newton_metres_written_as_pound_feet_are_found()
    {
        var slip = UnitSlip.Find(Q("455 lbf·ft"), HubRetainer)!;
        Assert.Equal(Q("455 N·m"), slip.Meant);
        Assert.Equal(1.01m, Math.Round(slip.ShareWritten, 2));
        Assert.Equal("455 lbf·ft is 617 N·m, 101 % of proof; 455 N·m is 75 %", slip.Line);
    }

    [Fact]
    public void Pound_feet_written_as_newton_metres_are_found()
    {
        var slip = UnitSlip.Find(Q("336 N·m"), HubRetainer)!;
        Assert.Equal(Q("336 lbf·ft"), slip.Meant);
        Assert.Equal(0.55m, Math.Round(slip.ShareWritten, 2));
        Assert.Equal("336 N·m is 55 % of proof; 336 lbf·ft is 75 %", slip.Line);
    }

    [Fact]
    public void The_planted_slip_of_the_backing_ring_is_found() =>
        Assert.Equal("235 lbf·ft is 319 N·m, 102 % of proof; 235 N·m is 75 %", UnitSlip.Find(Q("235 lbf·ft"), BackingRing)!.Line);

    [Fact]
    public void Pound_inches_taken_for_newton_metres_are_found() =>
        Assert.Equal(Q("2080 lbf·in"), UnitSlip.Find(Q("2080 N·m"), BackingRing)!.Meant);

    [Fact]
    public void Kilograms_metre_taken_for_newton_metres_are_found() =>
        Assert.Equal(Q("24 kgf·m"), UnitSlip.Find(Q("24 N·m"), BackingRing)!.Meant);

    [Fact]
    public void A_torque_that_fits_is_no_slip() => Assert.Null(UnitSlip.Find(Q("235 N·m"), BackingRing));

    [Fact]
    public void In_a_wide_window_what_fits_as_written_is_no_slip_though_it_fits_in_another_unit_too()
    {
        Assert.True(Wide.Contains(Q("180 N·m")) && Wide.Contains(Q("180 lbf·ft")));
        Assert.Null(UnitSlip.Find(Q("180 N·m"), Wide));
    }

    [Theory]
    [InlineData("200 lbf·in", "200 N·m")]
    [InlineData("190 lbf·in", "190 lbf·ft")]
    public void Of_two_units_that_fit_the_one_nearer_to_the_aim_was_meant(string written, string meant) =>
        Assert.Equal(Q(meant), UnitSlip.Find(Q(written), Wide)!.Meant);

    [Fact]
    public void A_torque_that_fits_in_no_unit_is_no_slip() => Assert.Null(UnitSlip.Find(Q("5 N·m"), BackingRing));

    [Theory]
    [InlineData("0 N·m")]
    [InlineData("-235 N·m")]
    [InlineData("235 bar")]
    [InlineData("999999999999999999 kgf·m")]
    public void What_makes_no_sense_is_no_slip(string torque) => Assert.Null(UnitSlip.Find(Q(torque), BackingRing));

    [Fact]
    public void What_was_meant_always_fits_the_window() =>
        Gen.Select(Gen.Int[1, 5000], Gen.Int[0, 3].Select(i => new[] { "N·m", "lbf·ft", "lbf·in", "kgf·m" }[i])).Sample((n, unit) =>
            UnitSlip.Find(Q($"{n} {unit}"), BackingRing) is not { } slip
            || (BackingRing.Contains(slip.Meant) && !BackingRing.Contains(slip.Written) && slip.Meant.Number == n));
}
