using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Tags;

/// <summary>
/// The heaps that parts are sorted to. A part that may be used again after a look is kept or scrapped by its reading; a
/// decision on a part's readings has a heap for each outcome. A new part that fails its reading is no heap: it is sent back.
/// </summary>
internal static class Piles
{
    private const string AfterALook = "inspect";

    public static IEnumerable<Pile> Of(ImmutableArray<PlannedStep> steps)
    {
        var decided = steps.SelectMany(s => Decided(s)).ToList();
        var settled = decided.Select(p => p.Part.Id.Value).ToHashSet(StringComparer.Ordinal);
        var measured = steps.SelectMany(Measured).Where(p => !settled.Contains(p.Part.Id.Value));
        return decided.Concat(measured.DistinctBy(p => (p.Part.Id.Value, p.Keep)));
    }

    private static IEnumerable<Pile> Decided(PlannedStep step)
    {
        if (step.Sheet.Step.Find(FactWord.Decide) is null)
            return [];
        var outcomes = step.Sheet.Step.All(FactWord.Outcome).Select(f => f.Value).OfType<OutcomeValue>().ToList();
        var reading = outcomes.SelectMany(o => o.When).SelectMany(c => c.All).OfType<StateClause>()
            .Select(c => step.Names.Reading(c.Thing.Value)).OfType<ReadingItem>()
            .FirstOrDefault(r => r.Of is { } of && step.Names.Part(of.Value) is not null);
        return reading is null ? [] : outcomes.Select(o => new Pile(step.Names.Part(reading.Of!.Value.Value)!, reading, o, null, [], step.Sheet));
    }

    private static IEnumerable<Pile> Measured(PlannedStep step)
    {
        foreach (var ask in step.Sheet.Asks.OfType<ReadingAsk>())
        {
            if (ask.Reading.Of is not { } of || step.Names.Part(of.Value) is not { } part || part.Reuse?.Value != AfterALook)
                continue;
            var bands = ask.Reading.Bands.ToLookup(b => ask.Stops.Contains(b.Name.Value));
            // a reading that stops nothing sorts nothing
            if (!bands[true].Any() || !bands[false].Any())
                continue;
            yield return new Pile(part, ask.Reading, null, true, [.. bands[false]], step.Sheet);
            yield return new Pile(part, ask.Reading, null, false, [.. bands[true]], step.Sheet);
        }
    }
}
