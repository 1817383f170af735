using Witnessmark.Checking.Work;
using Witnessmark.Engineering;
using Witnessmark.Engineering.Lifting;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Lifting;

/// <summary>A load is more than the house lets the crane lift at its radius, or the radius is off the crane's chart.</summary>
public sealed class CraneOverloaded : IProcedureRule
{
    public static RuleInfo Info { get; } = new("crane-overloaded", "Lifting", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        var share = scope.Library.Workshop.Limits.CraneUse;
        foreach (var hoist in Hoist.In(scope))
        {
            // no crane, or nobody says how far out the load hangs
            if (hoist is not { Crane: { } crane, Load.Radius: { Value.Unit.Kind: "length" } radius })
                continue;
            var point = CranePoint.Of([.. crane.Chart.Select(c => (c.Radius.Value, c.Capacity.Value))], radius.Value, share);
            // it may lift that much there
            if (point?.Carries(hoist.OnTheHook) == true)
                continue;
            var load = Measures.InBoth(hoist.OnTheHook.ToFigures(4));
            findings.Add(new Finding(
                Info,
                hoist.Lift.At,
                point is null
                    ? $"{Say.Step(hoist.Place)} lifts {hoist.Load.Id.Value} at {Measures.InBoth(radius.Value)}; the chart of {crane.Id.Value} ends before that."
                    : $"{Say.Step(hoist.Place)} hangs {load} on {crane.Id.Value} at {Measures.InBoth(radius.Value)}; the house lets it lift {Measures.InBoth(point.May.Value.ToFigures(4))} there.",
                "A crane tips or its boom folds before anything on the hook gives a sign, and it goes over toward the people who guide the load.",
                "Bring the crane nearer and write the smaller radius at the load, or take a crane that lifts it there.")
            {
                Further = [new FurtherPlace(radius.At, "how far out it hangs"), new FurtherPlace(crane.Id.At, "the crane and its chart")],
                Worked = point is null ? [] : [$"chart at {point.Charted.Radius} × share of the house: {point.May.Line}", $"load with its gear: {load}"],
            });
        }
    }
}
