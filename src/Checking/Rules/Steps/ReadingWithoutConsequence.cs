using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>Something is measured, and no step asks for the result.</summary>
public sealed class ReadingWithoutConsequence : IProcedureRule
{
    public static RuleInfo Info { get; } = new("reading-without-consequence", "Steps", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var (place, fact) in scope.Procedure.StepFacts())
            foreach (var name in fact.Taken())
            {
                // only written down, or no such thing
                if (Results(scope, name.Value) is not { Length: > 0 } results)
                    continue;
                // somebody acts on it
                if (IsAskedFor(scope, name.Value))
                    continue;
                // it belongs to a test, and that one is looked after by itself
                if (IsPartOfTest(scope, name.Value))
                    continue;
                findings.Add(
                    Info,
                    name.At,
                    $"{name.Value} is {Done(fact.Word)} in step {place.Step.Number} of {scope.Procedure.Id.Value}, and no step asks whether it is {Bad(results)}.",
                    "A bad result that no step asks for stops nobody: it is written down, and the work goes on over it.",
                    PutRight(name.Value, results));
            }
    }

    private static string Done(FactWord word) => word switch
    {
        FactWord.Measure => "measured",
        FactWord.Inspect => "looked at",
        FactWord.Test => "tested",
        _ => "worked out",
    };

    /// <summary>The bad result, where it is known which of them is bad.</summary>
    private static string Bad(string[] results) => results is ["inside", "outside"] or ["passed", "failed"] ? results[1] : "not good";

    private static string PutRight(string name, string[] results) =>
        Bad(results) == results[^1]
            ? $"Add `stop-if: {name} = {results[^1]}`, or decide on it."
            : $"Add `stop-if: {name} = …` with the results that must not go on (of {Say.And(results)}), or decide on it.";

    /// <summary>By the procedure itself, or by whoever performs it.</summary>
    private static bool IsAskedFor(Scope scope, string name) =>
        scope.Procedure.ThingsAskedFor().Contains(name) || scope.Callers().Any(p => p.ThingsAskedFor().Contains(name));

    private static string[] Results(Scope scope, string name)
    {
        if (scope.Reading(name) is { } reading)
            return [.. reading.Results];
        if (scope.Value(name) is { } value)
            return value.Accept is null && value.AcceptAsClearanceOf is null ? [] : ["inside", "outside"];
        return scope.Test(name) is null ? [] : ["passed", "failed"];
    }

    private static bool IsPartOfTest(Scope scope, string name) =>
        scope.Procedure.StepFacts().SelectMany(f => f.Fact.Taken())
            .Any(t => scope.Test(t.Value)?.Readings.Any(r => r.Value == name) == true);
}
