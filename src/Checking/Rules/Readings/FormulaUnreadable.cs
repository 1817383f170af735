using Witnessmark.Engineering.Formulas;
using Witnessmark.Language.Findings;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>A formula is not written as one.</summary>
public sealed class FormulaUnreadable : IMeasuringRule
{
    public static RuleInfo Info { get; } = new("formula-unreadable", "Readings", Severity.Fault);

    public static void Check(Measuring declared, FindingList findings)
    {
        foreach (var value in declared.Values)
        {
            // a choice without a formula, or a formula that reads
            if (value.Formula is not { } formula || Formula.Parse(formula.Value).Fault is not { } fault)
                continue;
            findings.Add(
                Info,
                fault.At.In(formula),
                $"The formula of {value.Id.Value} cannot be worked out: {fault.Says}.",
                "The sheet prints it for two people to work out alone, and the sign-off is worked out again by it.",
                "A formula has names, numbers with a unit, + - x / and brackets: `mean of cavity-depth - (sum of disc-thickness + sum of plate-thickness)`. A minus has a space before it.");
        }
    }
}
