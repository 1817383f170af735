using Witnessmark.Engineering.Formulas;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>A worked-out value comes out in another kind of unit than its limits.</summary>
public sealed class AcceptedKindDiffers : IMeasuringRule
{
    public static RuleInfo Info { get; } = new("accepted-kind-differs", "Readings", Severity.Fault);

    public static void Check(Measuring declared, FindingList findings)
    {
        var known = FormulaNames.Of(declared);
        foreach (var value in declared.Values)
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
