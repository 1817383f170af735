using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.People;

/// <summary>A step leaves something verified, and nobody but the one who did it has looked.</summary>
public sealed class VerifiedWithoutChecker : IProcedureRule
{
    public static RuleInfo Info { get; } = new("verified-without-checker", "People", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var (place, fact) in scope.Procedure.StepFacts())
            foreach (var state in fact.Value is LeftState left ? left.States : [])
            {
                // another state than verified
                if (!state.Values.Any(v => v.Value == "verified"))
                    continue;
                // a second person looks, or the step is itself that look
                if (place.Step.Find(FactWord.CheckedBy) is not null || place.Step.Find(FactWord.Checks) is not null)
                    continue;
                findings.Add(
                    Info,
                    state.At,
                    $"{Say.Step(place)} leaves {state.Thing.Value} verified, and names nobody who checks it.",
                    "What is closed over cannot be looked at again. One who looks at his own work sees what he meant to do.",
                    "Add `checked-by:` with a role that did not do the work: `checked-by: helper (independent)`.");
            }
    }
}
