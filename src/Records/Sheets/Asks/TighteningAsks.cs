using System.Collections.Immutable;
using Witnessmark.Engineering;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Records.Sheets;

/// <summary>Passes to ink and settings to dial, worked out on the scale of the wrench that is used.</summary>
internal static class TighteningAsks
{
    private const int FiguresPrinted = 3;

    public static IEnumerable<Ask> Passes(Amounts amounts, StepInPlace place, StepNames names)
    {
        var tools = (place.Step.Value<NameList>(FactWord.Tool)?.Names ?? []).Select(n => names.Wrench(n.Value)).OfType<Wrench>().ToList();
        var wrench = tools.FirstOrDefault(t => !t.IsAdapter);
        var adapter = tools.FirstOrDefault(t => t.IsAdapter);
        var groups = amounts.All.Select(a => names.Fasteners(a.Thing.Value)).OfType<FastenerGroup>().ToList();
        return groups.Select(g => Pass(groups.Count == 1 ? EntryKeys.Passes : g.Id.Value, g, wrench ?? Inferred(g, place, names), adapter, names) with { WrenchInferred = wrench is null });
    }

    /// <summary>Of a step that names no tool: the one wrench that reaches the torque.</summary>
    public static Wrench? Inferred(FastenerGroup group, StepInPlace place, StepNames names) =>
        place.Step.Find(FactWord.Tool) is null ? names.Root.OnlyWrenchFor(group) : null;

    private static PassAsk Pass(string key, FastenerGroup group, Wrench? wrench, Wrench? adapter, StepNames names) =>
        new(key, group, wrench, adapter, Settings(group, wrench, adapter, names), Sequence(group));

    public static IEnumerable<Ask> Setting(WrenchSetting setting, StepNames names)
    {
        if (names.Fasteners(setting.Group.Value)?.Torque is not { } torque || names.Wrench(setting.Wrench.Value) is not { } wrench)
            return [];
        var adapter = setting.Adapter is { } a ? names.Wrench(a.Value) : null;
        return Engineering.Tightening.Passes.Plan(torque.Value, [new TorquePass(1, false)], wrench, adapter) is [var full]
            ? [new SettingAsk(EntryKeys.Setting, full.Shown, full.Setting.Line)]
            : [];
    }

    private static ImmutableArray<PassSetting> Settings(FastenerGroup group, Wrench? wrench, Wrench? adapter, StepNames names)
    {
        if (group.Torque is not { } torque)
            return [];
        var passes = group.Passes.IsEmpty ? names.Root.Library.Workshop.Passes : group.Passes;
        var plans = Engineering.Tightening.Passes.Plan(torque.Value, passes.Select(p => p.Value), wrench, adapter);
        return [.. plans.Select(p => new PassSetting(p.Number, p.Pass.Share, p.Pass.Circular, p.Shown, AtBolt(p, adapter)))];
    }

    private static Quantity AtBolt(PassPlan plan, Wrench? adapter) =>
        adapter is null ? plan.Shown : plan.Gets ?? plan.Aim.Value.ToFigures(FiguresPrinted);

    private static ImmutableArray<int> Sequence(FastenerGroup group)
    {
        if (!group.Sequence.IsEmpty)
            return [.. group.Sequence.Select(n => n.Value)];
        return group.Count is { } count ? StarSequence.For(count.Value) : [];
    }
}
