using CsCheck;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Tightening;

public class PassesTests
{
    private static readonly TorquePass[] House = [new(0.30m, false), new(0.60m, false), new(1.00m, false), new(1.00m, true)];
    private static readonly Wrench ForTheRing = Wrench("70 to 340 N·m", "5 N·m", "0.75 m");

    /// <summary>Source: star10 of the demo scenario, worked by hand: 137, 273, 455, 455 N·m.</summary>
    [Fact]
    public void Passes_of_the_hub_retainer_are_137_273_455_455() =>
        Assert.Equal([137m, 273m, 455m, 455m], Passes.Plan(T("455 ± 25 N·m"), House).Select(p => Math.Round(p.Aim.Value.Number, MidpointRounding.AwayFromZero)));

    [Fact]
    public void The_ring_wrench_shows_70_140_235_235()
    {
        var plan = Passes.Plan(T("235 ± 12 N·m"), House, ForTheRing);
        Assert.Equal(["70 N·m", "140 N·m", "235 N·m", "235 N·m"], plan.Select(p => p.Dial!.Value.ToString()));
        Assert.Equal([null, null, true, true], plan.Select(p => p.Within));
    }

    [Fact]
    public void Half_a_division_goes_up() =>
        Assert.Equal("75 N·m", Passes.Mark(Q("72.5 N·m"), ForTheRing).ToString());

    [Fact]
    public void Marks_are_counted_from_the_lowest_one() =>
        Assert.Equal("42 N·m", Passes.Mark(Q("40 N·m"), Wrench("28 to 210 N·m", "14 N·m")).ToString());

    [Theory]
    [InlineData("67.4 N·m")]
    [InlineData("342.6 N·m")]
    [InlineData("700 N·m")]
    public void A_setting_off_the_scale_has_no_mark(string setting) => Assert.Null(Passes.Mark(Q(setting), ForTheRing));

    [Fact]
    public void A_coarse_scale_can_miss_the_tolerance()
    {
        var last = Passes.Plan(T("80 ± 6 N·m"), House, Wrench("40 to 200 N·m", "25 N·m"))[^1];
        Assert.Equal("90 N·m", last.Dial.ToString());
        Assert.False(last.Within);
    }

    [Fact]
    public void Through_a_crow_foot_less_is_dialled_and_the_bolt_gets_the_target()
    {
        var last = Passes.Plan(T("455 ± 25 N·m"), House, Wrench("150 to 750 N·m", "10 N·m", "1.10 m"), CrowFoot("120 mm"))[^1];
        Assert.Equal("410 N·m", last.Dial.ToString());
        Assert.Equal(454.7, last.Gets!.Value.In("N·m"), 0.05);
        Assert.True(last.Within);
    }

    [Fact]
    public void A_wrench_with_another_scale_is_dialled_in_its_own_unit()
    {
        var last = Passes.Plan(T("235 ± 12 N·m"), House, Wrench("50 to 250 lbf·ft", "5 lbf·ft"))[^1];
        Assert.Equal("175 lbf·ft", last.Dial.ToString());
        Assert.Equal(237.3, last.Gets!.Value.In("N·m"), 0.05);
        Assert.True(last.Within);
    }

    [Fact]
    public void Without_a_scale_there_is_no_mark_and_nothing_is_promised()
    {
        var last = Passes.Plan(T("235 ± 12 N·m"), House, Wrench("70 to 340 N·m"))[^1];
        Assert.Null(last.Dial);
        Assert.Null(last.Within);
        Assert.Equal("235 N·m", last.Shown.ToString());
    }

    [Fact]
    public void Rising_shares_are_dialled_rising_and_always_on_a_mark() =>
        Gen.Select(Gen.Int[70, 340], Gen.Int[1, 25], Gen.Int[1, 99], Gen.Int[1, 99]).Sample((target, division, a, b) =>
        {
            var wrench = Wrench("20 to 345 N·m", $"{division} N·m");
            TorquePass[] passes = [new(Math.Min(a, b) / 100m, false), new(Math.Max(a, b) / 100m, false), new(1, false)];
            var plan = Passes.Plan(new Toleranced(Quantity.Of(target, "N·m"), null), passes, wrench);
            var dials = plan.Select(p => p.Dial?.Number).OfType<decimal>().ToList();
            return plan.Length == 3
                && dials.SequenceEqual(dials.Order())
                && dials.All(d => (d - 20) % division == 0 && d is >= 20 and <= 345)
                && plan.All(p => p.Dial is not { } d || Math.Abs(d.Number - p.Setting.Value.Number) * 2 <= division);
        });

    [Theory]
    [InlineData("0 N·m", 1)]
    [InlineData("-235 N·m", 1)]
    [InlineData("235 mm", 1)]
    [InlineData("235 N·m", 0)]
    [InlineData("235 N·m", 1.2)]
    [InlineData("999999999999999999 N·m", 1)]
    public void What_makes_no_sense_has_no_plan(string target, double share) =>
        Assert.Empty(Passes.Plan(T(target), [new TorquePass((decimal)share, false)], ForTheRing));

    [Fact]
    public void An_adapter_for_a_wrench_of_unknown_length_has_no_plan() =>
        Assert.Empty(Passes.Plan(T("235 ± 12 N·m"), House, Wrench("70 to 340 N·m", "5 N·m"), CrowFoot("120 mm")));
}
