using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.People;

/// <summary>A load is lifted and nobody has written what it weighs.</summary>
public sealed class LoadWithoutMass : IProcedureRule
{
    public static RuleInfo Info { get; } = new("load-without-mass", "People", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var place in scope.Procedure.Walk())
        {
            // nothing is lifted
            if (place.Step.Find(FactWord.Lift) is not { } lift || Loads.Named(lift) is not { } name)
                continue;
            // not declared at all: said with all other unknown names
            if (scope.Load(name.Value) is not { } load)
                continue;
            // weighed
            if (load.Mass is not null)
                continue;
            findings.Add(
                Info,
                name.At,
                $"{Say.Step(place)} lifts {name.Value}, and the data sheet does not say what it weighs.",
                "Sling, crane and radius are chosen by the mass. By guess they are chosen by the last load that went well.",
                $"Add `mass:` to {name.Value} under `loads:` in the data sheet, and `weighed: yes` when it was on a scale.",
                new FurtherPlace(load.Id.At, "declared here without a mass"));
        }
    }
}
