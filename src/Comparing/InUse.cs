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

    /// <summary>A tool that reads less finely than the one before it; otherwise it is another tool and no more.</summary>
    public static Change Gauged(Change change, Scope old, Scope made)
    {
        if (Resolution(old, change.Old) is not { } fine || Resolution(made, change.New) is not { } coarse || !fine.Unit.SameKindAs(coarse.Unit) || coarse.CompareTo(fine) is not (var way and not 0))
            return change;
        return change with { Class = ChangeClass.Hazard, Sense = Senses.Of(-way), Because = $"it reads to {coarse}, the one before to {fine}" };
    }

    private static Language.Quantities.Quantity? Resolution(Scope scope, string? tool) => tool is not null && scope.Tool(tool) is Gauge gauge ? gauge.Resolution?.Value : null;

    private static bool Stops(Scope scope, string reading, string band) => scope.Procedure.Steps.SelectMany(s => s.All(FactWord.StopIf)).SelectMany(f => f.Conditions).SelectMany(c => c.All)
        .OfType<StateClause>().Any(c => c.Thing.Value == reading && c.HoldsAt(band));
}
