using Witnessmark.Engineering.Formulas;
using Witnessmark.Language.Findings;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>A formula uses a name that nothing is measured for.</summary>
public sealed class FormulaUnknownName : IMeasuringRule
{
    public static RuleInfo Info { get; } = new("formula-unknown-name", "Readings", Severity.Fault);

    public static void Check(Measuring declared, FindingList findings)
    {
        var known = FormulaNames.Of(declared);
        foreach (var value in declared.Values)
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
