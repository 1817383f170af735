using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>The name of a step forbids something.</summary>
public sealed class StepNameForbids : IProcedureRule
{
    public static RuleInfo Info { get; } = new("step-name-forbids", "Steps", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var step in scope.Procedure.Steps)
        {
            // something to do
            if (!Forbids(step.Name.Value, scope))
                continue;
            findings.Add(
                Info,
                step.Name.At,
                $"{Say.Step(scope.Procedure, step)} is named “{step.Name.Value}”: that is something not to do, and nobody can do it and sign for it.",
                "A prohibition that stands as a step is read when its turn comes, and by then the hand has moved.",
                "Write it as a message before the step that it protects, or name what is to be done instead.");
        }
    }

    private static bool Forbids(string name, Scope scope)
    {
        var words = name.Words();
        var first = words.Next();
        return Words.Forbidding.Has(first, scope) || (first.IsWord("do") && words.Next().IsWord("not"));
    }
}
