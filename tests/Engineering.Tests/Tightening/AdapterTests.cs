using CsCheck;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Quantities;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Tightening;

public class AdapterTests
{
    [Fact]
    public void A_published_extension_of_six_inches_takes_a_third_off() =>
        Assert.Equal(Published.Output("AD-01").Number, Adapter.Setting(Q("30 lbf·ft"), Q("12 in"), Q("6 in"), Q("0 deg"))!.Value.Number);

    [Fact]
    public void A_published_extension_brings_the_published_torque_to_the_bolt() =>
        Assert.Equal(100, (double)Adapter.Setting(Published.Output("AD-03"), Q("500 mm"), Q("150 mm"), Q("0 deg"))!.Value.Number, 1e-9);

    /// <summary>
    /// Sources: US Army TM 9-254 fig. 46 and TM 5-3810-305-23; a published example of 80 N·m with 40 + 5 cm (AD-02 of the collected
    /// check values); the last two are the demo's crow-foot, worked by hand.
    /// </summary>
    [Theory]
    [InlineData("70 lbf·in", "12 in", "2 in", 60)]
    [InlineData("300 lbf·ft", "18 in", "6 in", 225)]
    [InlineData("80 N·m", "40 cm", "5 cm", 71.1)]
    [InlineData("455 N·m", "1.10 m", "0.12 m", 410)]
    [InlineData("455 N·m", "1.10 m", "120 mm", 410)]
    public void In_line_the_setting_is_the_published_one(string torque, string length, string extension, double published) =>
        Assert.Equal(published, (double)Adapter.Setting(Q(torque), Q(length), Q(extension), Q("0 deg"))!.Value.Number, published < 100 ? 0.05 : 0.5);

    [Fact]
    public void Across_nothing_changes() =>
        Gen.Select(Gen.Int[1, 2000], Gen.Int[50, 2000], Gen.Int[0, 500]).Sample((torque, length, extension) =>
            Adapter.Setting(Q($"{torque} N·m"), Q($"{length} mm"), Q($"{extension} mm"), Q("90 deg"))!.Value.Number == torque);

    [Fact]
    public void In_line_less_is_dialled_and_folded_back_more() =>
        Gen.Select(Gen.Int[1, 2000], Gen.Int[200, 2000], Gen.Int[1, 150]).Sample((torque, length, extension) =>
            Setting(torque, length, extension, 0) < torque && Setting(torque, length, extension, 180) > torque);

    [Fact]
    public void The_more_it_stands_across_the_more_is_dialled() =>
        Gen.Select(Gen.Int[200, 2000], Gen.Int[1, 150], Gen.Int[0, 179]).Sample((length, extension, angle) =>
            Setting(100, length, extension, angle) < Setting(100, length, extension, angle + 1));

    [Theory]
    [InlineData("455 N·m", "0 m", "120 mm", "0 deg")]
    [InlineData("455 N·m", "1.1 m", "-120 mm", "0 deg")]
    [InlineData("455 N·m", "120 mm", "120 mm", "180 deg")]
    [InlineData("455 N·m", "1.1 m", "120 mm", "-10 deg")]
    [InlineData("455 N·m", "1.1 m", "120 mm", "200 deg")]
    [InlineData("455 N·m", "1.1 kg", "120 mm", "0 deg")]
    [InlineData("455 bar", "1.1 m", "120 mm", "0 deg")]
    [InlineData("455 N·m", "1.1 m", "999999999999999999 km", "0 deg")]
    [InlineData("455 N·m", "0.00000000001 mm", "120 mm", "180 deg")]
    public void What_makes_no_sense_has_no_setting(string torque, string length, string extension, string angle) =>
        Assert.Null(Adapter.Setting(Q(torque), Q(length), Q(extension), Q(angle)));

    [Fact]
    public void A_wrench_without_a_length_has_no_setting() =>
        Assert.Null(Adapter.Setting(Q("455 N·m"), Wrench("150 to 750 N·m"), CrowFoot("120 mm")));

    private static decimal Setting(int torque, int length, int extension, int angle) =>
        Adapter.Setting(Quantity.Of(torque, "N·m"), Quantity.Of(length, "mm"), Quantity.Of(extension, "mm"), Quantity.Of(angle, "deg"))!.Value.Number;
}
