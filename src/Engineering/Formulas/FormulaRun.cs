using Witnessmark.Engineering.Measuring;
using Witnessmark.Language.Text;

namespace Witnessmark.Engineering.Formulas;

/// <summary>Works a formula out, and remembers what each part came to for the line. The first fault ends it.</summary>
/// <param name="unitsOnly">Only kinds count: a zero below the stroke is no fault.</param>
internal sealed class FormulaRun(Func<string, Measured?> valueOf, bool unitsOnly)
{
    private const decimal NextToNothing = 0.000_000_001m;

    private readonly Dictionary<FormulaNode, Amount> _found = new(ReferenceEqualityComparer.Instance);

    public FormulaFault? Fault { get; private set; }

    public Amount Found(FormulaNode node) => _found[node];

    public Amount? Value(FormulaNode node)
    {
        var value = node switch
        {
            Constant constant => Amount.Of(constant.Number, constant.Unit, constant.Decimals),
            Named named => Gathered(named),
            Bracketed bracketed => Value(bracketed.Inner),
            Negative negative => Value(negative.Inner) is { } inner ? inner with { Number = -inner.Number } : null,
            Combined combined => Combine(combined),
            _ => null,
        };
        if (value is not { } found)
            return null;
        if (!Sensible.Number(found.Number))
            return Fail(FormulaProblem.TooLarge, node.At, "this comes to more than any machine has");
        _found[node] = found;
        return found;
    }

    private Amount? Gathered(Named named)
    {
        if (valueOf(named.Name) is not { } measured)
            return Fail(FormulaProblem.UnknownName, named.At, $"{named.Name} is not measured or declared");
        if (named.Gathering == Gathering.Only && measured.Points.Skip(1).Any())
            return Fail(FormulaProblem.SeveralValues, named.At, $"{named.Name} has {measured.Points.Count()} values: say mean of, sum of, least of, most of or spread of");
        if (named.Gathering == Gathering.Sum && measured.Unit.Offset != 0)
            return Fail(FormulaProblem.KindsDiffer, named.At, "temperatures cannot be added");
        return Amount.Of(named.Gathering.Of(measured).Number, measured.Unit, measured.Decimals, named.Gathering == Gathering.Spread);
    }

    private Amount? Combine(Combined node)
    {
        if (Value(node.Left) is not { } left || Value(node.Right) is not { } right)
            return null;
        if (node.Sign == '/' && Math.Abs(right.Number) < NextToNothing)
        {
            if (!unitsOnly)
                return Fail(FormulaProblem.DividedByZero, node.Right.At, "what stands below the stroke comes to zero");
            right = right with { Number = 1 };
        }
        return node.Sign switch
        {
            '+' => left.Plus(right, +1) ?? Differ(node, left, right, "added to"),
            '−' => left.Plus(right, -1) ?? Differ(node, left, right, "taken from"),
            '×' => left.Times(right) ?? NoUnit(node, left, right, "times"),
            _ => left.Over(right) ?? NoUnit(node, left, right, "by"),
        };
    }

    private Amount? Differ(Combined node, Amount left, Amount right, string verb) =>
        Fail(FormulaProblem.KindsDiffer, node.Right.At, $"{Kind(right)} cannot be {verb} {Kind(left)}");

    private Amount? NoUnit(Combined node, Amount left, Amount right, string word) =>
        Fail(FormulaProblem.NoSuchUnit, node.At, $"{Kind(left)} {word} {Kind(right)} has no unit here");

    private static string Kind(Amount amount) => amount.Unit?.Kind ?? "a pure number";

    private Amount? Fail(FormulaProblem problem, TextSpan at, string says)
    {
        Fault ??= new FormulaFault(problem, at, says);
        return null;
    }
}
