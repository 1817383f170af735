using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>A step asks for a result that no step has found out.</summary>
public sealed class ResultNotTaken : IProcedureRule
{
    public static RuleInfo Info { get; } = new("result-not-taken", "Steps", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        var reported = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (place, fact) in scope.Procedure.StepFacts())
            foreach (var clause in Conditions.States(fact))
            {
                var name = clause.Thing.Value;
                // a state of the machine, not something to be taken
                if (scope.TakenBy(name) is not { } verb)
                    continue;
                // taken here, before, or brought along by the contract
                if (scope.IsTakenUpTo(place.Step, name) || scope.Brought(name))
                    continue;
                // once for each: the step that takes it is missing for all of them
                if (!reported.Add(name))
                    continue;
                findings.Add(
                    Info,
                    clause.Thing.At,
                    $"{Say.Step(place)} asks for {name}, and no step up to there takes it.",
                    "A question that nobody has measured for is answered from memory, and then the work goes on.",
                    $"Add `{verb.Spelled()}: {name}` to this step or to one before it.");
            }
    }
}
