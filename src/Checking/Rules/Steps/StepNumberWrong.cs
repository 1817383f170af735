using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>The number in the file is not the one that prints.</summary>
public sealed class StepNumberWrong : IProcedureRule
{
    public static RuleInfo Info { get; } = new("step-number-wrong", "Steps", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        var off = 0;
        foreach (var step in scope.Procedure.Steps)
        {
            var before = off;
            off = step.WrittenNumber.Value - step.Number;
            // right, or only carried on from a wrong one
            if (off == 0 || off == before)
                continue;
            findings.Add(
                Info,
                step.WrittenNumber.At,
                $"You wrote {step.WrittenNumber.Value}; it prints as {step.Number}.",
                "Step numbers run through the whole sheet. Who calls a number over the radio, or signs for one, means the printed one.",
                $"Write {step.Number} and count on from there. The names of the steps stay as they are.");
        }
    }
}
