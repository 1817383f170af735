using Witnessmark.Engineering.Formulas;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>What the names in a formula can stand for: readings, other values, and the cavity of a stack.</summary>
/// <param name="readings">Those of a procedure, which go before those of its machine; null for a data sheet alone.</param>
internal sealed class FormulaNames(Items<ReadingItem>? readings, Items<WorkedValue>? values, Machine? machine)
{
    private const string CavityOf = "cavity of ";
    private const int Deepest = 50;

    private readonly Dictionary<string, Unit?> _units = new(StringComparer.Ordinal);

    /// <summary>Every name that could be meant.</summary>
    public IReadOnlyCollection<string> All { get; } =
    [
        .. readings?.Names ?? [],
        .. values?.Names ?? [],
        .. machine?.Readings.Names ?? [],
        .. machine?.Values.Names ?? [],
        .. machine?.Stacks.Where(s => s.Cavity is not null).Select(s => CavityOf + s.Id.Value) ?? [],
    ];

    public static FormulaNames Of(Measuring declared) => new(declared.Procedure?.Readings, declared.Procedure?.Values, declared.Machine);

    public bool Knows(string name) => All.Contains(name, StringComparer.Ordinal);

    /// <summary>The unit that a name is measured in, or null when nothing says.</summary>
    public Unit? UnitOf(string name) => UnitOf(name, 0);

    /// <summary>The values that stand in the formula of a value, or in theirs, and so on.</summary>
    public IReadOnlySet<string> BehindValue(string name)
    {
        var behind = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<string>([name]);
        while (open.TryPop(out var next))
            if ((values?.Find(next) ?? machine?.Values.Find(next))?.Formula is { } formula && Formula.Parse(formula.Value).Value is { } parsed)
                foreach (var used in parsed.Names.Where(behind.Add))
                    open.Push(used);
        return behind;
    }

    private Unit? UnitOf(string name, int depth)
    {
        // each name is worked out once, and a value that stands in its own formula has no unit
        if (_units.TryGetValue(name, out var known) || depth > Deepest)
            return known;
        _units[name] = null;
        return _units[name] = Find(name, depth);
    }

    private Unit? Find(string name, int depth)
    {
        if (name.StartsWith(CavityOf, StringComparison.Ordinal))
            return machine?.Stacks.Find(name[CavityOf.Length..])?.Cavity?.Value.Target.Unit;
        if ((readings?.Find(name) ?? machine?.Readings.Find(name)) is { } reading)
            return reading.Units().Select(u => u.Unit).FirstOrDefault();
        if ((values?.Find(name) ?? machine?.Values.Find(name))?.Formula is { } formula && Formula.Parse(formula.Value).Value is { } parsed)
            return parsed.UnitOf(n => UnitOf(n, depth + 1)).Value;
        return null;
    }
}

internal static class FormulaPlaces
{
    /// <summary>Where in the file a place in a formula is; the whole formula when it was written with signs that were taken out.</summary>
    public static Location In(this TextSpan at, Located<string> formula) =>
        formula.At.Span.Length == formula.Value.Length && at.End > at.Start ? formula.At.Part(at.Start, at.End) : formula.At;

    /// <summary>Where a name stands in a formula, as a whole word: <c>depth</c> is not in <c>cavity-depth</c>.</summary>
    public static Location PlaceOf(this Located<string> formula, string name)
    {
        for (var at = 0; (at = formula.Value.IndexOf(name, at, StringComparison.Ordinal)) >= 0; at++)
            if (!Joins(formula.Value, at - 1) && !Joins(formula.Value, at + name.Length))
                return TextSpan.Of(at, name.Length).In(formula);
        return formula.At;
    }

    private static bool Joins(string text, int at) => at >= 0 && at < text.Length && (char.IsLetterOrDigit(text[at]) || text[at] is '-' or '_');
}
