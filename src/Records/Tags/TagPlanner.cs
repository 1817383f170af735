using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Tags;

/// <summary>One pass over the steps of a sheet for everything that needs a tag, label or card.</summary>
public static class TagPlanner
{
    public static TagPlan Plan(SheetPlan sheet)
    {
        var names = StepNames.Of(sheet.Scope);
        var steps = sheet.Part.Walk(sheet.Procedure)
            .Select(place => SheetPlanner.Step(place, names))
            .SelectMany(step => step.Performed.Prepend(step))
            .ToImmutableArray();
        return new TagPlan(
            DeviceStays.Of(sheet.Part, steps, names),
            [.. steps.SelectMany(s => Drained(s, sheet.Scope)).DistinctBy(d => d.Space.Id.Value)],
            [.. steps.SelectMany(PartBags).DistinctBy(b => b.Part.Id.Value)],
            [.. steps.SelectMany(BoltBags).DistinctBy(g => g.Id.Value)],
            [.. Piles.Of(steps)],
            [.. Headings(sheet.Part).Where(f => f.Word == FactWord.Owes).Select(f => f.Value).OfType<DebtValue>()]);
    }

    private static IEnumerable<Fact> Headings(ProcedurePart part) => part.Facts.Concat(part.Sections.SelectMany(s => s.Facts));

    private static IEnumerable<DrainedSpace> Drained(PlannedStep step, Scope scope) =>
        (step.Sheet.Step.Value<NameList>(FactWord.Drain)?.Names ?? [])
            .Select(n => scope.Space(step.Names.Filled(n.Value))).OfType<FluidSpace>()
            .Select(space => new DrainedSpace(space, space.DrainsInto is { } into ? scope.Tool(into.Value) as Container : null, step.Sheet.Code));

    // readings of a declared part lie in the grid of the sheet; those of the thing that was just taken out go on its bag
    private static IEnumerable<PartBag> PartBags(PlannedStep step)
    {
        var readings = step.Sheet.Asks.OfType<ReadingAsk>().Where(r => r.Reading.Of is null).ToImmutableArray();
        return readings.IsEmpty ? [] : Removed(step).Select(step.Names.Part).OfType<PartKind>().Select(p => new PartBag(p, readings, step.Sheet.Code));
    }

    private static IEnumerable<FastenerGroup> BoltBags(PlannedStep step) => Removed(step).Select(step.Names.Fasteners).OfType<FastenerGroup>();

    private static IEnumerable<string> Removed(PlannedStep step) => step.Sheet.Step.Value<Amounts>(FactWord.Remove)?.All.Select(a => a.Thing.Value) ?? [];
}
