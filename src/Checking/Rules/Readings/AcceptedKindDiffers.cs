using Witnessmark.Engineering.Formulas;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>A worked-out value comes out in another kind of unit than its limits.</summary>
public sealed class AcceptedKindDiffers : ISheetRule, IProcedureRule
{
    public static RuleInfo Info { get; } = new("accepted-kind-differs", "Readings", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings) =>
        Check(machine.Values, FormulaNames.Of(machine), findings);

    public static void Check(Scope scope, FindingList findings) => Check(scope.Procedure.Values, FormulaNames.Of(scope), findings);

    private static void Check(Items<WorkedValue> values, FormulaNames known, FindingList findings)
    {
        foreach (var value in values)
        {
            // no limits of its own, or no formula
            if (value.Accept is not { } accept || value.Formula is not { } formula)
                continue;
            // a formula that comes to nothing is a fault of its own
            if (Formula.Parse(formula.Value).Value is not { } parsed || parsed.UnitOf(known.UnitOf).Value is not { } unit)
                continue;
            // limits of the same kind
            if (unit.SameKindAs(accept.Value.Unit))
                continue;
            findings.Add(
                Info,
                accept.At,
                $"{value.Id.Value} comes out as {Say.Article(unit.Kind)} in {unit}, but {accept.Value} is {Say.Article(accept.Value.Unit.Kind)}.",
                "The result cannot be held against its limits, so nobody can say whether the work may go on.",
                $"Write the limits in {unit}, or look the formula up again.",
                new FurtherPlace(formula.At, $"comes out in {unit}"));
        }
    }
}
