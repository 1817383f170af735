using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Model;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Tightening;

/// <summary>ISO 6789:2003 trusts 20 to 100 % of the greatest value, the 2017 edition from the lowest mark: both read in summaries.</summary>
public class WrenchRangeTests
{
    [Theory]
    [InlineData("150 to 750 N·m", "455 N·m", WrenchBound.Inside, "455 N·m is 61 % of 750 N·m")]
    [InlineData("150 to 750 N·m", "150 N·m", WrenchBound.Inside, "150 N·m is 20 % of 750 N·m")]
    [InlineData("150 to 750 N·m", "750 N·m", WrenchBound.Inside, "750 N·m is 100 % of 750 N·m")]
    [InlineData("150 to 750 N·m", "45 N·m", WrenchBound.BelowLowestMark, "45 N·m is 6 % of 750 N·m")]
    [InlineData("150 to 750 N·m", "760 N·m", WrenchBound.AboveGreatestMark, "760 N·m is 101 % of 750 N·m")]
    [InlineData("50 to 750 N·m", "100 N·m", WrenchBound.BelowHouseShare, "100 N·m is 13 % of 750 N·m")]
    [InlineData("150 to 750 N·m", "336 lbf·ft", WrenchBound.Inside, "336 lbf·ft is 61 % of 750 N·m")]
    public void A_setting_is_held_against_scale_and_house_share(string range, string setting, WrenchBound broken, string line)
    {
        var fit = WrenchRange.Check(Wrench(range), Q(setting), HouseLimits.Default)!;
        Assert.Equal(broken, fit.Broken);
        Assert.Equal(line, fit.Line);
        Assert.Equal(broken == WrenchBound.Inside, fit.Fits);
    }

    [Fact]
    public void A_house_may_stop_short_of_the_greatest_mark()
    {
        var fit = WrenchRange.Check(Wrench("70 to 340 N·m"), Q("330 N·m"), HouseLimits.Default with { WrenchShare = (0.20m, 0.90m) })!;
        Assert.Equal(WrenchBound.AboveHouseShare, fit.Broken);
        Assert.Equal(306m, fit.Trusted.High!.Value.Value.Number);
    }

    [Fact]
    public void Trusted_is_the_narrower_of_scale_and_house_share()
    {
        Assert.Equal(Q("150 N·m").Number, WrenchRange.Check(Wrench("50 to 750 N·m"), Q("200 N·m"), HouseLimits.Default)!.Trusted.Low!.Value.Value.Number);
        Assert.Equal(Q("200 N·m").Number, WrenchRange.Check(Wrench("200 to 750 N·m"), Q("200 N·m"), HouseLimits.Default)!.Trusted.Low!.Value.Value.Number);
    }

    [Theory]
    [InlineData("from 150 N·m", "455 N·m")]
    [InlineData("150 to 750 N·m", "455 bar")]
    [InlineData("0 to 25 mm", "455 N·m")]
    [InlineData("0 N·m", "455 N·m")]
    [InlineData("150 to 750 N·m", "999999999999999999 N·m")]
    public void Without_a_range_or_a_torque_nothing_is_said(string range, string setting) =>
        Assert.Null(WrenchRange.Check(Wrench(range), Q(setting), HouseLimits.Default));
}
