using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Lifting;

/// <summary>A crane lifts a load of which nobody says how far out it hangs.</summary>
public sealed class CraneRadiusMissing : IProcedureRule
{
    public static RuleInfo Info { get; } = new("crane-radius-missing", "Lifting", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var hoist in Hoist.In(scope))
        {
            // no crane, or the radius is written
            if (hoist is not { Crane: { } crane, Load.Radius: null })
                continue;
            // light enough for one person
            if (Loads.ByHand(scope, hoist.Lift))
                continue;
            findings.Add(
                Info,
                hoist.Lift.At,
                $"{Say.Step(hoist.Place)} lifts {hoist.Load.Id.Value} ({hoist.Load.Mass!.Value.Value}) with {crane.Id.Value}, and nobody says at what radius.",
                "What a crane may lift falls with every step outward. Without the radius its chart says nothing.",
                $"Plan where the crane stands and write it at the load: `radius: {crane.Chart[0].Radius.Value}`.",
                new FurtherPlace(hoist.Load.Id.At, "the load"),
                new FurtherPlace(crane.Id.At, "the crane and its chart"));
        }
    }
}
