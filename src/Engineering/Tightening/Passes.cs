using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Tightening;

/// <summary>One pass round the bolts: what is aimed at, what is dialled, what the bolt gets.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Aim">The pass's share of the target, at the bolt: <c>30 % of 235 N·m = 70.5 N·m</c>.</param>
/// <param name="Setting">What the wrench would have to say, through the adapter when there is one; in the wrench's unit.</param>
/// <param name="Dial">The nearest mark of the wrench; null without a wrench or scale, or when no mark is near.</param>
/// <param name="Gets">At the bolt with <paramref name="Dial"/>, in the target's unit; null without it.</param>
/// <param name="Within">Of a pass at the full target: whether <paramref name="Gets"/> is inside its tolerance; null when it cannot be said.</param>
public sealed record PassPlan(int Number, TorquePass Pass, Worked<Quantity> Aim, Worked<Quantity> Setting, Quantity? Dial, Quantity? Gets, bool? Within)
{
    /// <summary>What to print in the box: the mark, or the setting in three figures.</summary>
    public Quantity Shown => Dial ?? Setting.Value.ToFigures(3);
}

/// <summary>
/// Passes worked out for a wrench. Marks are counted from its lowest one in whole divisions; the nearest is taken, half a
/// division goes up. A setting more than half a division off the scale has no mark.
/// </summary>
public static class Passes
{
    /// <summary>Empty when target, share or adapter make no sense: nothing is printed rather than something wrong.</summary>
    public static ImmutableArray<PassPlan> Plan(Toleranced target, IEnumerable<TorquePass> passes, Wrench? wrench = null, Wrench? adapter = null)
    {
        var plans = ImmutableArray.CreateBuilder<PassPlan>();
        foreach (var pass in passes)
        {
            if (One(plans.Count + 1, target, pass, wrench, adapter) is not { } plan)
                return [];
            plans.Add(plan);
        }
        return plans.ToImmutable();
    }

    private static PassPlan? One(int number, Toleranced target, TorquePass pass, Wrench? wrench, Wrench? adapter)
    {
        if (!Sensible.Positive(target.Target, "torque") || pass.Share is <= 0 or > 1)
            return null;
        var aim = target.Target with { Number = target.Target.Number * pass.Share };
        var aimed = new Worked<Quantity>(aim, pass.Share == 1 ? $"{target.Target}" : $"{Percent(pass)} of {target.Target} = {aim.ToFigures(3)}");
        if (SettingFor(aimed, wrench, adapter) is not { } setting)
            return null;
        var dial = wrench is null ? null : Mark(setting.Value, wrench);
        var gets = dial is { } d ? AtBolt(d, wrench!, adapter)?.In(target.Target.Unit) : null;
        return new PassPlan(number, pass, aimed, setting, dial, gets, pass.Share == 1 ? Inside(gets, target) : null);
    }

    private static Worked<Quantity>? SettingFor(Worked<Quantity> aim, Wrench? wrench, Wrench? adapter)
    {
        var setting = aim;
        if (adapter is not null && wrench is not null)
        {
            if (Adapter.Setting(aim.Value, wrench, adapter) is not { } through)
                return null;
            setting = through;
        }
        return ScaleUnit(wrench) is { } unit && unit != setting.Value.Unit ? InUnit(setting, unit) : setting;
    }

    private static Worked<Quantity> InUnit(Worked<Quantity> setting, Unit unit)
    {
        var converted = setting.Value.In(unit);
        return new(converted, $"{setting.Line} = {converted.ToFigures(3)}");
    }

    /// <summary>The wrench's nearest mark, or null when it has no scale or the setting is off it by more than half a division.</summary>
    public static Quantity? Mark(Quantity setting, Wrench wrench)
    {
        if (wrench is not { Scale.Value: { } division, Range.Value: { Low: { } low, High: { } high } } || !Sensible.Positive(division, "torque"))
            return null;
        if (!Sensible.Is(setting, "torque") || !Sensible.Is(high.Value, "torque") || Graduation.ToMark(setting, low.Value, division) is not { } mark)
            return null;
        return mark.CompareTo(low.Value) >= 0 && mark.CompareTo(high.Value) <= 0 ? mark : null;
    }

    private static string Percent(TorquePass pass) => $"{Figures.Plain(pass.Share * 100)} %";

    private static Unit? ScaleUnit(Wrench? wrench) => wrench?.Scale?.Value.Unit is { Kind: "torque" } unit ? unit : null;

    private static Quantity? AtBolt(Quantity dial, Wrench wrench, Wrench? adapter) => adapter is null ? dial : Adapter.AtBolt(dial, wrench, adapter);

    private static bool? Inside(Quantity? gets, Toleranced target)
    {
        if (gets is not { } torque || target.Tolerance is not { } tolerance || !Sensible.Is(tolerance, "torque"))
            return null;
        return Math.Abs(torque.Number - target.Target.Number) <= tolerance.In(torque.Unit).Number;
    }
}
