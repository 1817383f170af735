using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>Something is measured before what must come first, so that it does not read true.</summary>
public sealed class MeasuredTooEarly : IProcedureRule
{
    public static RuleInfo Info { get; } = new("measured-too-early", "Readings", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var (place, fact) in scope.Procedure.StepFacts())
            foreach (var name in fact.Taken())
            {
                // no reading, or one that waits for nothing
                if (scope.Reading(name.Value)?.TakenAfter is not { } first)
                    continue;
                // done by then, here or by whoever brings it
                if (scope.IsTakenUpTo(place.Step, first.Value) || scope.Brought(first.Value))
                    continue;
                findings.Add(
                    Info,
                    name.At,
                    $"{Say.Step(place)} takes {name.Value}, and no step up to there takes {first.Value}, which comes first.",
                    "A bearing that was not turned, a gauge that was not set to zero: the number is read to a hundredth and is of something else.",
                    $"Add the step before it, with `{Verb(scope, first.Value)}: {first.Value}`.",
                    new FurtherPlace(first.At, "what comes first"));
            }
    }

    private static string Verb(Scope scope, string name) => (scope.TakenBy(name) ?? FactWord.Measure).Spelled();
}
