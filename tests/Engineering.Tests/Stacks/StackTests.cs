using Witnessmark.Engineering.Stacks;
using Witnessmark.Language.Model;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Stacks;

/// <summary>Source of the numbers: disc stack of the demo scenario, worked by hand before and without this code.</summary>
public class StackTests
{
    internal static readonly PartStack BrakeStack = Stack(
        "86.2 ± 0.15 mm",
        "8.6 mm",
        "0.5 mm",
        Row(1, "end-plate"),
        Row(1, "friction-disc"),
        Row(8, "steel-plate", "friction-disc"),
        Row(1, "end-plate"));

    private static readonly Dictionary<string, PartKind> Parts = new(StringComparer.Ordinal)
    {
        ["friction-disc"] = Part("friction-disc", "5.00 ± 0.08 mm", "4.60 mm"),
        ["steel-plate"] = Part("steel-plate", "3.20 ± 0.04 mm", "3.10 mm"),
        ["end-plate"] = Part("end-plate", "6.20 ± 0.10 mm", "6.00 mm"),
    };

    internal static PartKind? Find(string name) => Parts.GetValueOrDefault(name);

    [Fact]
    public void The_brake_stack_stands_83_high_and_leaves_3_2_clearance()
    {
        var height = StackHeight.Of(BrakeStack, Find)!;
        Assert.Equal(83.0m, height.Height.Value.Number);
        Assert.Equal(3.2m, height.Clearance.Value.Number);
        Assert.Equal("86.2 − (9 × 5.00 + 8 × 3.20 + 2 × 6.20) = 3.2 mm", height.Clearance.Line);
    }

    [Fact]
    public void Its_clearance_is_off_by_1_39_at_worst_and_0_34_likely()
    {
        var height = StackHeight.Of(BrakeStack, Find)!;
        Assert.Equal(1.39m, height.WorstCase.Value.Number);
        Assert.Equal(0.34, height.RootSumSquare.Value.In("mm"), 0.005);
    }

    [Fact]
    public void With_every_part_at_its_limit_it_travels_8_0_of_8_1()
    {
        var travel = WearTravel.Of(BrakeStack, Find)!;
        Assert.Equal(8.0m, travel.Travel.Value.Number);
        Assert.Equal(8.1m, travel.Allowed.Value.Number);
        Assert.True(travel.Fits);
        Assert.Equal("86.2 − (41.4 + 24.8 + 12.0) = 8.0 mm", travel.Travel.Line);
    }

    [Fact]
    public void Travel_exactly_to_the_margin_still_fits() =>
        Assert.True(WearTravel.Of(BrakeStack with { SealOverrun = Written(Q("8.5 mm")) }, Find)!.Fits);

    [Fact]
    public void In_the_deepest_cavity_it_travels_further() =>
        Assert.Equal(8.15m, WearTravel.Of(BrakeStack, Find)!.InDeepestCavity.Number);

    [Fact]
    public void A_thinner_limit_for_the_plates_no_longer_fits() =>
        Assert.False(WearTravel.Of(BrakeStack, n => n == "steel-plate" ? Part(n, "3.20 ± 0.04 mm", "3.05 mm") : Find(n))!.Fits);

    [Fact]
    public void A_part_that_does_not_wear_counts_with_its_least_thickness() =>
        Assert.Equal(86.2m - (9 * 4.60m) - (8 * 3.16m) - 12.0m, WearTravel.Of(BrakeStack, n => n == "steel-plate" ? Part(n, "3.20 ± 0.04 mm") : Find(n))!.Travel.Value.Number);

    /// <summary>New build of the demo: nine discs of 5.02, eight plates of 3.17, two end plates of 6.21.</summary>
    [Fact]
    public void The_measured_build_has_3_24_clearance()
    {
        var pieces = Enumerable.Repeat(Q("5.02 mm"), 9).Concat(Enumerable.Repeat(Q("3.17 mm"), 8)).Concat(Enumerable.Repeat(Q("6.21 mm"), 2));
        var clearance = StackHeight.Measured(Q("86.20 mm"), pieces)!;
        Assert.Equal(3.24m, clearance.Value.Number);
        Assert.Equal("86.20 − 82.96 = 3.24 mm", clearance.Line);
    }

    [Fact]
    public void A_part_in_inches_counts_in_millimetres() =>
        Assert.Equal(
            StackHeight.Of(BrakeStack, Find)!.Height.Value.Number,
            StackHeight.Of(BrakeStack, n => n == "end-plate" ? Part(n, "0.24409448818897638 in") : Find(n))!.Height.Value.Number,
            10);

    [Fact]
    public void What_is_missing_leaves_the_height_unsaid()
    {
        Assert.Null(StackHeight.Of(BrakeStack, _ => null));
        Assert.Null(StackHeight.Of(BrakeStack, n => Part(n, null)));
        Assert.Null(StackHeight.Of(BrakeStack, n => Part(n, "5 bar")));
        Assert.Null(StackHeight.Of(BrakeStack with { Cavity = null }, Find));
        Assert.Null(StackHeight.Of(BrakeStack with { Order = [] }, Find));
        Assert.Null(WearTravel.Of(BrakeStack with { SealOverrun = null }, Find));
        Assert.Null(StackHeight.Measured(Q("86.2 mm"), []));
        Assert.Null(StackHeight.Measured(Q("86.2 mm"), [Q("5 bar")]));
    }

    [Fact]
    public void A_stack_longer_than_any_machine_is_refused_without_unrolling_it() =>
        Assert.Null(StackHeight.Of(BrakeStack with { Order = [Row(int.MaxValue, "friction-disc"), Row(int.MaxValue, "steel-plate")] }, Find));
}
