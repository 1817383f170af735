using Witnessmark.Checking.Work;
using Witnessmark.Engineering;
using Witnessmark.Engineering.Lifting;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Lifting;

/// <summary>A leg of a sling pulls more than the sling is rated for.</summary>
public sealed class SlingOverloaded : IProcedureRule
{
    public static RuleInfo Info { get; } = new("sling-overloaded", "Lifting", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var hoist in Hoist.In(scope))
        {
            // nothing that it hangs in, or no rating
            if (hoist.Gear is not { Rated: { Value.Unit.Kind: "mass" } rated } gear)
                continue;
            // no angle between several legs: sling-angle-missing says so
            if (LegLoad.Of(hoist.Mass, gear.Legs?.Value ?? 1, hoist.Load.Angle?.Value) is not { } leg)
                continue;
            // strong enough
            if (leg.Mass.Value.CompareTo(rated.Value) <= 0)
                continue;
            var legs = gear.Legs?.Value ?? 1;
            findings.Add(new Finding(
                Info,
                hoist.Lift.At,
                $"{(legs > 1 ? $"Each leg of {gear.Id.Value}" : Say.Capital(gear.Id.Value))} carries {Measures.InBoth(leg.Mass.Value.ToFigures(3))} of {hoist.Load.Id.Value}; it is rated for {Measures.InBoth(rated.Value)}.",
                "A sling past its rating parts without a warning, and what hung in it falls or swings.",
                legs > 1 ? "Take longer legs, so that they stand steeper, or a stronger sling." : "Take a stronger one.")
            {
                Further = [new FurtherPlace(rated.At, "what a leg is rated for"), new FurtherPlace(hoist.Load.Id.At, "the load, with its angle")],
                Worked = [$"on one leg: {leg.Mass.Line}"],
            });
        }
    }
}
