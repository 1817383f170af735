using Witnessmark.Language.Model;

namespace Witnessmark.Comparing;

/// <summary>What a change of an item means where it is used: a band that stops the work is strict when it is wide.</summary>
internal static class InUse
{
    public static Change Of(Change change, IItem item, Scope old, Scope made) => (item, change.What.Split(' ')) switch
    {
        (ReadingItem, ["bands", var band]) when Stops(old, item.Id.Value, band) || Stops(made, item.Id.Value, band) => change with { Sense = Senses.Turned(change.Sense) },
        (ReadingItem, ["gauge"]) => Gauged(change, old, made),
        (Hazard, _) => change with { Hazards = [item.Id.Value] },
        _ => change,
    };

    /// <summary>A gauge that reads less finely than the one before it; as fine a one is another tool and no more.</summary>
    public static Change Gauged(Change change, Scope old, Scope made)
    {
        if (Gauge(old, change.Old) is null && Gauge(made, change.New) is null)
            return change;
        if (Gauge(old, change.Old)?.Resolution?.Value is not { } fine || Gauge(made, change.New)?.Resolution?.Value is not { } coarse || !fine.Unit.SameKindAs(coarse.Unit))
            return change with { Class = ChangeClass.Hazard, Because = "nobody can say from the tool lists whether it reads as finely" };
        var way = fine.CompareTo(coarse);
        return way == 0 ? change : change with { Class = ChangeClass.Hazard, Sense = Senses.Of(way), Because = $"it reads to {coarse}, the one before to {fine}" };
    }

    private static Gauge? Gauge(Scope scope, string? tool) => tool is null ? null : scope.Tool(tool) as Gauge;

    private static bool Stops(Scope scope, string reading, string band) => scope.Procedure.Steps.SelectMany(s => s.All(FactWord.StopIf)).SelectMany(f => f.Conditions).SelectMany(c => c.All)
        .OfType<StateClause>().Any(c => c.Thing.Value == reading && c.HoldsAt(band));
}
