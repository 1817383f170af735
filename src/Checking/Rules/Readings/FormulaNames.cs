using Witnessmark.Engineering.Formulas;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>What the names in a formula can stand for: readings, other values, and dimensions of a stack.</summary>
/// <param name="Own">Items of the procedure, which go before those of the sheet.</param>
internal sealed record FormulaNames(Items<ReadingItem>? Own, Items<WorkedValue>? OwnValues, Machine? Machine)
{
    private const string CavityOf = "cavity of ";
    private const int Deepest = 20;

    public static FormulaNames Of(Machine machine) => new(null, null, machine);

    public static FormulaNames Of(Scope scope) => new(scope.Procedure.Readings, scope.Procedure.Values, scope.Machine);

    /// <summary>Every name that could be meant.</summary>
    public IEnumerable<string> All =>
    [
        .. Own?.Names ?? [],
        .. OwnValues?.Names ?? [],
        .. Machine?.Readings.Names ?? [],
        .. Machine?.Values.Names ?? [],
        .. Machine?.Stacks.Where(s => s.Cavity is not null).Select(s => CavityOf + s.Id.Value) ?? [],
    ];

    public bool Knows(string name) => All.Contains(name, StringComparer.Ordinal);

    /// <summary>The unit that a name is measured in, or null when nothing says.</summary>
    public Unit? UnitOf(string name) => UnitOf(name, 0);

    private Unit? UnitOf(string name, int depth)
    {
        if (name.StartsWith(CavityOf, StringComparison.Ordinal))
            return Machine?.Stacks.Find(name[CavityOf.Length..])?.Cavity?.Value.Target.Unit;
        if ((Own?.Find(name) ?? Machine?.Readings.Find(name)) is { } reading)
            return reading.Units().Select(u => u.Unit).FirstOrDefault();
        // values that stand in each other's formulas would go round for ever
        if (depth < Deepest && (OwnValues?.Find(name) ?? Machine?.Values.Find(name)) is { Formula: { } formula })
            return Formula.Parse(formula.Value) is { Value: { } parsed } && parsed.UnitOf(n => UnitOf(n, depth + 1)) is { Value: { } unit } ? unit : null;
        return null;
    }
}

internal static class FormulaPlace
{
    /// <summary>Where in the file a place in a formula is; the whole formula when it was written with signs that were taken out.</summary>
    public static Location In(this TextSpan at, Located<string> formula) =>
        formula.At.Span.Length == formula.Value.Length && at.End > at.Start ? formula.At.Part(at.Start, at.End) : formula.At;
}
