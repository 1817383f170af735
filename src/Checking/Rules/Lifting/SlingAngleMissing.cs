using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Lifting;

/// <summary>A load hangs in several legs and nobody says at what angle.</summary>
public sealed class SlingAngleMissing : IProcedureRule
{
    public static RuleInfo Info { get; } = new("sling-angle-missing", "Lifting", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var hoist in Hoist.In(scope))
        {
            // one leg hangs straight
            if (hoist.Gear is not { Legs: { Value: > 1 } legs } gear)
                continue;
            // said
            if (hoist.Load.Angle is not null)
                continue;
            findings.Add(
                Info,
                hoist.Lift.At,
                $"{Say.Step(hoist.Place)} lifts {hoist.Load.Id.Value} in the {Say.Number(legs.Value)} legs of {gear.Id.Value}, and nobody says how flat they stand.",
                "The flatter the legs, the harder each pulls: at 30° to the horizontal each of two carries as much as the whole load.",
                "Write it at the load, between leg and horizontal: `angle: 60 deg`.",
                new FurtherPlace(hoist.Load.Id.At, "the load"));
        }
    }
}
