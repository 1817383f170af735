using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>A value is worked out from a reading that no step takes.</summary>
public sealed class InputNotTaken : IProcedureRule
{
    public static RuleInfo Info { get; } = new("input-not-taken", "Steps", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var (place, fact) in scope.Procedure.StepFacts())
            if (fact.Word == FactWord.WorkOut)
                foreach (var name in fact.Taken())
                    Check(scope, place, name, findings);
    }

    private static void Check(Scope scope, StepInPlace place, Located<string> name, FindingList findings)
    {
        // no such value, or one without a formula
        if (scope.Value(name.Value)?.Formula is not { } formula)
            return;
        string[] missing = [.. Inputs(scope, formula.Value).Where(i => !scope.IsTakenUpTo(place.Step, i) && !scope.Brought(i))];
        // all that goes into it is there
        if (missing.Length == 0)
            return;
        findings.Add(
            Info,
            name.At,
            $"{Say.Step(place)} works out {name.Value} from {Say.And(missing)}, and no step up to there takes {(missing.Length == 1 ? "it" : "them")}.",
            "The boxes for it are not on the sheet. Somebody takes the number of the last job, or the one in the book.",
            $"Add a step before it with `measure: {missing[0]}`.",
            new FurtherPlace(formula.At, "the formula"));
    }

    /// <summary>The readings that a formula names.</summary>
    private static IEnumerable<string> Inputs(Scope scope, string formula) =>
        formula.Split(' ', '(', ')').Distinct(StringComparer.Ordinal).Where(n => scope.Reading(n) is not null);
}
