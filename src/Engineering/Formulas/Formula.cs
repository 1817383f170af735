using System.Collections.Immutable;
using Witnessmark.Engineering.Measuring;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Formulas;

/// <summary>
/// A formula over named readings: <c>mean of cavity-depth - (sum of disc-thickness + sum of plate-thickness)</c>. It knows
/// <c>+ - x / ( )</c>, <c>sum of</c>, <c>mean of</c>, <c>least of</c>, <c>most of</c>, <c>spread of</c>, names (also
/// <c>cavity of brake-stack</c>) and constants with their unit (<c>0.048 MPa/°C</c>). A minus sign has a space before it, for
/// names have hyphens.
/// </summary>
public sealed class Formula
{
    private readonly FormulaNode _root;

    private Formula(string text, FormulaNode root) => (Text, _root) = (text, root);

    /// <summary>As written.</summary>
    public string Text { get; }

    /// <summary>The names used, in the order met, each once: <c>cavity-depth</c>, <c>cavity of brake-stack</c>.</summary>
    public ImmutableArray<string> Names => [.. NamesIn(_root).Distinct(StringComparer.Ordinal)];

    public static Outcome<Formula> Parse(string text)
    {
        var read = FormulaReader.Read(text);
        return read.Value is { } root ? new Formula(text, root) : read.Fault!;
    }

    /// <summary>
    /// The result and its line, <c>86.20 − (45.18 + 25.36 + 12.42) = 86.20 − 82.96 = 3.24 mm</c>, or why there is none. The unit
    /// is that of the value most to the left; a result without unit is given in %.
    /// </summary>
    /// <param name="valueOf">What a name stands for; null when it stands for nothing.</param>
    /// <param name="round">Round value and line to this step, which is of the same kind; null: the value is not rounded.</param>
    public Outcome<Worked<Quantity>> Evaluate(Func<string, Measured?> valueOf, Quantity? round = null)
    {
        var run = new FormulaRun(valueOf, unitsOnly: false);
        if (run.Value(_root) is not { } amount)
            return run.Fault!;
        var line = FormulaLine.Of(_root, run);
        if (round is not { } step)
            return new Worked<Quantity>(amount.ToQuantity(), $"{line} = {Figures.Signed(amount.Shown)}");
        if (Graduation.ToStep(amount.ToQuantity(), step) is { } rounded)
            return new Worked<Quantity>(rounded, $"{line} = {Figures.Signed(rounded)}");
        return new FormulaFault(FormulaProblem.KindsDiffer, _root.At, $"{amount.ToQuantity().Unit.Kind} cannot be rounded to {step}");
    }

    /// <summary>The unit of the result before anything is measured, or what is wrong with kinds and names.</summary>
    public Outcome<Unit> UnitOf(Func<string, Unit?> unitOf)
    {
        var run = new FormulaRun(name => unitOf(name) is { } unit ? Measured.Of(new Quantity(1, unit)) : null, unitsOnly: true);
        return run.Value(_root) is { } amount ? amount.ToQuantity().Unit : run.Fault!;
    }

    /// <summary>For the sheet: minus and times as signs, hyphens of names as spaces unless <paramref name="title"/> knows better.</summary>
    /// <param name="gathered">The words before a name for <c>sum</c>, <c>mean</c> …; in English when null.</param>
    public string InWords(Func<string, string?>? title = null, Func<string, string>? gathered = null) =>
        FormulaLine.InWords(_root, title ?? (_ => null), gathered ?? (word => $"{word} of"));

    public override string ToString() => Text;

    private static IEnumerable<string> NamesIn(FormulaNode node) => node switch
    {
        Named named => [named.Name],
        Negative negative => NamesIn(negative.Inner),
        Bracketed bracketed => NamesIn(bracketed.Inner),
        Combined combined => NamesIn(combined.Left).Concat(NamesIn(combined.Right)),
        _ => [],
    };
}
