using Witnessmark.Engineering.Formulas;
using Witnessmark.Language.Findings;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>A formula adds or takes away things of different kinds.</summary>
public sealed class FormulaKindsDiffer : IMeasuringRule
{
    public static RuleInfo Info { get; } = new("formula-kinds-differ", "Readings", Severity.Fault);

    public static void Check(Measuring declared, FindingList findings)
    {
        var known = FormulaNames.Of(declared);
        foreach (var value in declared.Values)
        {
            // a formula that does not read is a fault of its own
            if (value.Formula is not { } formula || Formula.Parse(formula.Value).Value is not { } parsed)
                continue;
            // so are names that nobody measures, and readings without a unit
            if (parsed.UnitOf(known.UnitOf).Fault is not { Problem: not FormulaProblem.UnknownName } fault)
                continue;
            findings.Add(
                Info,
                fault.At.In(formula),
                $"The formula of {value.Id.Value} does not come out in a unit: {fault.Says}.",
                "A length less a pressure is nothing. Two people with pocket calculators would still get a number, and it would be believed.",
                "Look at the unit of each name; one of them is the wrong reading, or a factor with its unit is missing.");
        }
    }
}
