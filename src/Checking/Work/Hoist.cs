using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Checking.Work;

/// <summary>A step that lifts a declared load, with what it hangs in and what lifts it.</summary>
/// <param name="Mass">As it counts: one that nobody weighed counts more.</param>
/// <param name="Gear">Sling or hook, from the tool list; null when none is named or known.</param>
/// <param name="Crane">The one among the tools of the step, or the only one on the tool lists; null when there is no such.</param>
internal sealed record Hoist(StepInPlace Place, Fact Lift, LoadItem Load, Quantity Mass, LiftingGear? Gear, LiftingGear? Crane)
{
    private static readonly Once<Scope, ImmutableArray<Hoist>> InScope = new(s => [.. Find(s)]);

    /// <summary>Load and gear, as they hang on the hook.</summary>
    public Quantity OnTheHook => Gear?.Mass?.Value is { Unit.Kind: "mass" } gear ? Mass with { Number = Mass.Number + gear.In(Mass.Unit).Number } : Mass;

    public static ImmutableArray<Hoist> In(Scope scope) => InScope.Of(scope);

    /// <summary>The mass as it counts, or null when none is written.</summary>
    public static Quantity? MassOf(LoadItem load, HouseLimits limits) =>
        load.Mass is not { Value: { Unit.Kind: "mass" } mass } ? null
        : load.IsEstimated ? mass with { Number = mass.Number * limits.EstimatedMass }
        : mass;

    private static IEnumerable<Hoist> Find(Scope scope)
    {
        foreach (var (place, fact) in scope.Procedure.StepFacts())
            if (fact.Word == FactWord.Lift && Loads.Named(fact) is { } name && scope.Load(name.Value) is { } load
                && MassOf(load, scope.Library.Workshop.Limits) is { } mass)
                yield return new Hoist(place, fact, load, mass, load.Gear is { } gear ? scope.Tool(gear.Value) as LiftingGear : null, CraneOf(scope, place, load));
    }

    private static LiftingGear? CraneOf(Scope scope, StepInPlace place, LoadItem load)
    {
        // what hangs in nothing is carried
        if (load.Gear is null)
            return null;
        var named = place.Effective(FactWord.Tools)?.Value is NameList tools ? tools.Names.Select(n => scope.Tool(n.Value)).OfType<LiftingGear>() : [];
        return named.FirstOrDefault(IsCrane) ?? (scope.ToolLists.SelectMany(t => t.Lifting).Where(IsCrane).ToList() is [var only] ? only : null);
    }

    private static bool IsCrane(LiftingGear gear) => !gear.Chart.IsEmpty;
}
