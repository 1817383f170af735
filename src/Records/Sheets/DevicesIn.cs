using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Sheets;

/// <summary>Devices that are in the machine, in the order they were placed: the STILL IN line of a section.</summary>
internal sealed record DevicesIn(ImmutableArray<(DeviceKind Kind, string Tag)> All)
{
    private const string Placed = "placed";

    public static readonly DevicesIn None = new([]);

    public ImmutableArray<StillIn> Listed =>
    [
        .. All.GroupBy(d => d.Kind.Id.Value, StringComparer.Ordinal)
            .Select(g => new StillIn(g.First().Kind, [.. g.Select(d => d.Tag)])),
    ];

    /// <summary>What facts of a step or a contract do to them, in the order written.</summary>
    public DevicesIn After(ImmutableArray<Fact> facts, StepNames names) =>
        Enumerable.Range(0, facts.Turns()).Aggregate(this, (devices, _) => devices.Once(facts, names));

    private DevicesIn Once(ImmutableArray<Fact> facts, StepNames names) =>
        facts.Aggregate(this, (devices, fact) => fact switch
        {
            { Word: FactWord.StartsWith, Value: ConditionValue c } => devices.Contract(c.Condition, names, []),
            { Word: FactWord.Place, Value: Amounts a } => a.All.Aggregate(devices, (d, amount) => d.Place(amount, names)),
            { Word: FactWord.Recover, Value: Amounts a } => a.All.Aggregate(devices, (d, amount) => d.Recover(amount, names)),
            _ => devices,
        });

    /// <param name="within">Bundles being opened: one that holds itself is a fault elsewhere and ends here.</param>
    private DevicesIn Contract(Condition condition, StepNames names, ImmutableHashSet<string> within) =>
        condition.All.Aggregate(this, (devices, clause) => clause switch
        {
            BundleClause bundle when !within.Contains(bundle.Name.Value) => devices.Bundle(bundle.Name.Value, names, within.Add(bundle.Name.Value)),
            StateClause { Negated: false } s when s.Values is [{ Value: Placed }] && names.Device(s.Thing.Value) is { } kind =>
                devices.With(kind, TagsOf(kind, names.Filled(s.Thing.Value))),
            DevicesClause { Every: true, Value.Value: Placed } every => devices.Every(every.ThatBlock?.Value, names),
            _ => devices,
        });

    private DevicesIn Bundle(string name, StepNames names, ImmutableHashSet<string> within) =>
        (names.Root.Machine?.Conditions.Find(name)?.All ?? []).Aggregate(this, (d, c) => d.Contract(c.Value, names, within));

    private DevicesIn Every(string? thatBlock, StepNames names) =>
        (names.Root.Machine?.Devices ?? Items<DeviceKind>.None)
            .Where(k => thatBlock is null || k.Blocks.Any(b => b.Value == thatBlock))
            .Aggregate(this, (d, k) => d.With(k, k.Tags.Select(t => t.Value)));

    private DevicesIn Place(Amount amount, StepNames names)
    {
        if (names.Device(amount.Thing.Value) is not { } kind)
            return this;
        var free = TagsOf(kind, names.Filled(amount.Thing.Value)).Where(t => !IsIn(t));
        return With(kind, amount.Count is { } count ? free.Take(count.Value) : free);
    }

    private DevicesIn Recover(Amount amount, StepNames names)
    {
        if (names.Device(amount.Thing.Value) is not { } kind)
            return this;
        var live = TagsOf(kind, names.Filled(amount.Thing.Value)).Where(IsIn);
        var gone = (amount.Count is { } count ? live.Take(count.Value) : live).ToHashSet(StringComparer.Ordinal);
        return new DevicesIn(All.RemoveAll(d => gone.Contains(d.Tag)));
    }

    private DevicesIn With(DeviceKind kind, IEnumerable<string> tags) =>
        new(All.AddRange(tags.Where(t => !IsIn(t)).Select(t => (kind, t))));

    private bool IsIn(string tag) => All.Any(d => d.Tag == tag);

    /// <summary>All tags of a kind, or the one tag that was named.</summary>
    private static IEnumerable<string> TagsOf(DeviceKind kind, string named) =>
        kind.Id.Value == named ? kind.Tags.Select(t => t.Value) : [named];
}
