using Witnessmark.Engineering.Formulas;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>A formula uses a name that nothing is measured for.</summary>
public sealed class FormulaUnknownName : ISheetRule, IProcedureRule
{
    public static RuleInfo Info { get; } = new("formula-unknown-name", "Readings", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings) =>
        Check(machine.Values, FormulaNames.Of(machine), findings);

    public static void Check(Scope scope, FindingList findings) => Check(scope.Procedure.Values, FormulaNames.Of(scope), findings);

    private static void Check(Items<WorkedValue> values, FormulaNames known, FindingList findings)
    {
        foreach (var value in values)
        {
            // a formula that does not read is a fault of its own
            if (value.Formula is not { } formula || Formula.Parse(formula.Value).Value is not { } parsed)
                continue;
            foreach (var name in parsed.Names.Where(n => !known.Knows(n)))
            {
                var meant = NearMiss.Of(name, known.All);
                findings.Add(
                    Info,
                    formula.PlaceOf(name),
                    $"The formula of {value.Id.Value} uses {name}, and no reading, value or cavity has that name.",
                    "Nobody is asked to measure it, so the value can never be worked out.",
                    meant is null ? $"Declare {name} as a reading, or write the name of one." : $"Did you mean {meant}?");
            }
        }
    }
}
