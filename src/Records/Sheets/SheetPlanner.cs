using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Sheets;

/// <summary>One pass over a part's steps: what each wants written down, and which devices are in the machine.</summary>
public static class SheetPlanner
{
    /// <param name="part">Null: the first part, which is the only one of most procedures.</param>
    /// <exception cref="ArgumentException">No part has that name.</exception>
    public static SheetPlan Plan(Scope scope, string? part)
    {
        var chosen = part is null
            ? scope.Procedure.Parts[0]
            : scope.Procedure.Part(part) ?? throw new ArgumentException($"{scope.Procedure.Id} has no part {part}", nameof(part));
        var names = StepNames.Of(scope);
        var devices = DevicesIn.None.After(chosen.Facts, names);
        var sections = ImmutableArray.CreateBuilder<SheetSection>();
        var walk = chosen.Walk(scope.Procedure).ToLookup(p => p.Section, ReferenceEqualityComparer.Instance);
        foreach (var section in chosen.Sections)
        {
            devices = devices.After(section.Facts, names);
            var steps = walk[section].Select(p => Step(p, names)).ToImmutableArray();
            var before = devices.Listed;
            var placed = ImmutableArray.CreateBuilder<SheetStep>();
            foreach (var step in steps)
                placed.Add(step.Placed(ref devices));
            sections.Add(new SheetSection(section, before, placed.ToImmutable()));
        }
        return new SheetPlan(scope, chosen, sections.ToImmutable());
    }

    internal static PlannedStep Step(StepInPlace place, StepNames names)
    {
        var turns = LoopTurns.Of(place, names);
        var guard = Guards.Holds(place, names) is true ? null : Guards.Of(place);
        var performed = PerformedSteps.Of(place, names, guard, turns);
        var sheet = new SheetStep(
            new StepCode(place.Step.Number, null),
            place,
            names.Shown,
            AskList.Of(place, names, turns),
            [.. performed.Select(p => p.Sheet)])
        {
            Guard = guard,
            Turns = turns,
        };
        return new PlannedStep(sheet, names, performed);
    }
}

/// <summary>A step of the sheet with the names that its facts were read with.</summary>
internal sealed record PlannedStep(SheetStep Sheet, StepNames Names, ImmutableArray<PlannedStep> Performed)
{
    /// <summary>The step with the devices that it leaves in the machine.</summary>
    public SheetStep Placed(ref DevicesIn devices)
    {
        devices = devices.After(Sheet.Step.Facts, Names);
        var own = devices.Listed;
        var performed = ImmutableArray.CreateBuilder<SheetStep>();
        foreach (var inner in Performed)
            performed.Add(inner.Placed(ref devices));
        return Sheet with { Performed = performed.ToImmutable(), LeavesIn = own };
    }
}
