using System.Collections.Immutable;
using CsCheck;
using Witnessmark.Engineering.Fasteners;
using Witnessmark.Engineering.Formulas;
using Witnessmark.Engineering.Measuring;
using Witnessmark.Engineering.Shims;
using Witnessmark.Engineering.Stacks;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests;

/// <summary>Numbers that no machine has, in any unit, are refused by value: nothing overflows, divides by zero or throws.</summary>
public class HostileNumbersTests
{
    private static readonly decimal[] Extremes =
    [
        0, 1, -1, 0.5m, 16, 235, 1_000_000_000, -1_000_000_000, 0.000_000_001m, 999_999_999.999_999_999m,
        1e-28m, -1e-28m, 1e18m, decimal.MaxValue, decimal.MinValue, 1m / 3, 7.9e27m,
    ];

    private static readonly Gen<decimal> Number = Gen.Int[0, Extremes.Length - 1].Select(i => Extremes[i]);
    private static readonly Gen<Unit> AnyUnit = Gen.Int[0, UnitTable.All.Length - 1].Select(i => UnitTable.All[i]);
    private static readonly Gen<Quantity> Any = Gen.Select(Number, AnyUnit, (n, u) => new Quantity(n, u));
    private static readonly Gen<Quantity> Torque = Of("torque");
    private static readonly Gen<Quantity> Length = Of("length");

    [Fact]
    public void No_thread_class_nut_factor_or_limit_brings_the_torque_window_down() =>
        Gen.Select(Length, Length, Number, Number, Torque, Torque).Sample(
            (d, p, k, share, torque, tolerance) =>
            {
                var limits = HouseLimits.Default with { TorqueWindow = (share, k), FrictionScatter = share, WrenchScatter = k, WrenchShare = (share, k) };
                var window = TorqueWindow.For(new BoltStrength(new MetricThread(d, p), "10.9"), k, limits, share) ?? Sound(torque, tolerance, limits);
                _ = UnitSlip.Find(torque, window);
                _ = PreloadScatter.Of(window, new Toleranced(torque, tolerance), limits);
                _ = window.PreloadAt(torque);
                return window.TProof.Value.Number > 0 && StressArea.Of(new MetricThread(d, p)) is null or { Value.Number: > 0 };
            },
            iter: 20_000);

    [Fact]
    public void No_setting_range_scale_or_length_brings_the_wrench_down() =>
        Gen.Select(Torque, Torque, Torque, Torque, Length, Gen.Select(Length, Any, Number)).Sample(
            (target, low, high, scale, length, adapter) =>
            {
                var wrench = Wrench("70 to 340 N·m") with { Range = Written(QuantityRange.Between(low, high)), Scale = Written(scale), Length = Written(length) };
                var crowFoot = CrowFoot("1 mm", "0 deg") with { Extension = Written(adapter.Item1), Angle = Written(adapter.Item2) };
                var limits = HouseLimits.Default with { WrenchShare = (adapter.Item3, 1) };
                _ = Passes.Plan(new Toleranced(target, scale), [new(adapter.Item3, false), new(1, true)], wrench, crowFoot);
                _ = Passes.Plan(new Toleranced(target, scale), [new(1, true)], wrench);
                return WrenchRange.Check(wrench, target, limits) is null or { Line.Length: > 0 };
            },
            iter: 20_000);

    [Fact]
    public void No_cavity_or_thickness_brings_the_stack_down() =>
        Gen.Select(Length, Length, Length, Length, Any).Sample(
            (cavity, thickness, tolerance, worn, margin) =>
            {
                var part = Part("disc", "5 mm") with { Thickness = Written(new Toleranced(thickness, tolerance)), WornAt = Written(worn) };
                var stack = Stack("86 mm", "8 mm", null, Row(9, "disc")) with
                {
                    Cavity = Written(new Toleranced(cavity, tolerance)),
                    SealOverrun = Written(thickness),
                    Margin = Written(margin),
                };
                _ = WearTravel.Of(stack, _ => part);
                _ = StackHeight.Measured(cavity, [thickness, tolerance, worn]);
                return StackHeight.Of(stack, _ => part) is null or { Height.Value.Number: > 0 };
            },
            iter: 20_000);

    [Fact]
    public void No_reading_brings_a_judgement_or_formula_down() =>
        Gen.Select(Any, Any, Any, Gen.Int[0, 5]).Sample(
            (a, b, c, sign) =>
            {
                var formula = Formula.Parse($"mean of a {"+-x/+-"[sign]} spread of b {"/x-+x/"[sign]} c").Value!;
                ImmutableArray<Quantity> pair = [a, b];
                var judged = Judgement.Of(Judged("sum", "part", "low: below 1 mm", "high: from 1 mm"), [pair, [c]]);
                var worked = formula.Evaluate(name => Measured.Of(name == "a" ? a : name == "b" ? b : c), c);
                return worked.Ok != (worked.Fault is not null) && judged is null or { Values.Length: 1 };
            },
            iter: 20_000);

    [Fact]
    public void No_shim_size_play_or_old_pack_brings_the_choice_down() =>
        Gen.Select(Any, Any, Length, Length, Length, Any).Sample(
            (size, other, low, high, target, old) =>
            {
                if (ShimStock.Of([size, other], 3) is not { } stock)
                    return true;
                var setting = new ShimSetting(stock, true, QuantityRange.Between(low, high), target);
                _ = ShimTable.Of(setting, old, QuantityRange.Between(low, high));
                return setting.Choose(old, low) is null or { Wanted.Line.Length: > 0 };
            },
            iter: 20_000);

    private static Gen<Quantity> Of(string kind)
    {
        var units = UnitTable.All.Where(u => u.Kind == kind).ToArray();
        return Gen.Select(Number, Gen.Int[0, units.Length - 1], (n, i) => new Quantity(n, units[i]));
    }

    private static TorqueWindow Sound(Quantity torque, Quantity tolerance, HouseLimits limits)
    {
        var window = TorqueWindow.For(Bolt("M16x2", "10.9"), 0.15m, HouseLimits.Default)!;
        _ = PreloadScatter.Of(window, new Toleranced(torque, tolerance), limits);
        return window;
    }
}
