using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>A step has more words than the house allows.</summary>
public sealed class StepTooLong : IProcedureRule
{
    public static RuleInfo Info { get; } = new("step-too-long", "Steps", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        var limit = scope.Library.Workshop.Limits.StepWords;
        foreach (var step in scope.Procedure.Steps)
        {
            var words = step.Name.Value.WordCount() + step.Text.Plain().WordCount();
            // within the limit of the house
            if (words <= limit)
                continue;
            findings.Add(
                Info,
                step.Name.At,
                $"{Say.Step(scope.Procedure, step)} has {words} words; the house limit is {limit}.",
                "A long step is read in halves: the second half is skipped when somebody calls, and the step is signed all the same.",
                "Cut words, or make two steps of it.");
        }
    }
}
