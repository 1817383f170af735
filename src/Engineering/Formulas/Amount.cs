using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Formulas;

/// <summary>A number in the middle of a calculation.</summary>
/// <param name="Unit">Null: a pure number. Shares (%) are pure numbers.</param>
/// <param name="Decimals">To be shown.</param>
/// <param name="Difference">Of a temperature: how many degrees apart, not how warm.</param>
internal readonly record struct Amount(decimal Number, Unit? Unit, int Decimals, bool Difference = false)
{
    private const int FiguresOfProduct = 3;

    public static Amount Of(decimal number, Unit? unit, int decimals, bool difference = false) =>
        unit is { Dimension: var dimension } && dimension == Dimension.None
            ? new Amount(number * unit.Factor, null, decimals + 2)
            : new Amount(number, unit, decimals, difference);

    /// <summary>How warm something is, on a scale whose zero is not nothing.</summary>
    private bool IsLevel => Unit is { Offset: not 0 } && !Difference;

    public Quantity ToQuantity() => Unit is null ? new Quantity(Number * 100, UnitTable.Get("%")) : new Quantity(Number, Unit);

    /// <summary>As the line shows it; one decimal more than was read when there is more.</summary>
    public Quantity Shown => Figures.Trimmed(ToQuantity().RoundedTo(Unit is null ? Math.Max(0, Decimals - 2) : Decimals + 1), Unit is null ? 0 : Decimals);

    public string NumberText => Unit is null ? Figures.Plain(Number) : Shown.NumberText;

    /// <summary>Null when kinds differ, or a level would be added to a level.</summary>
    public Amount? Plus(Amount other, int sign)
    {
        if (Unit?.Kind != other.Unit?.Kind || (other.IsLevel && (sign > 0 || !IsLevel)))
            return null;
        var decimals = Math.Max(Decimals, other.Decimals);
        var apart = Difference || (IsLevel && other.IsLevel);
        return new Amount(Number + (sign * other.NumberIn(Unit)), Unit, decimals, apart);
    }

    /// <summary>Null when the product has no unit in the table, or a level is multiplied.</summary>
    public Amount? Times(Amount other) =>
        Unit is null && other.Unit is not null ? other.Times(this) : Combine(other, Number * other.Number, (a, b) => a * b, (a, b) => a * b);

    /// <summary>Null as for a product. <paramref name="other"/> is not zero.</summary>
    public Amount? Over(Amount other) => Combine(other, Number / other.Number, (a, b) => a / b, (a, b) => a / b);

    private decimal NumberIn(Unit? unit)
    {
        if (unit is null || Unit is null || unit == Unit)
            return Number;
        return IsLevel ? unit.FromSi(Unit.ToSi(Number)) : Number * Unit.Factor / unit.Factor;
    }

    private Amount? Combine(Amount other, decimal number, Func<Dimension, Dimension, Dimension> dimensions, Func<decimal, decimal, decimal> factors)
    {
        if (IsLevel || other.IsLevel)
            return null;
        var dimension = dimensions(Unit?.Dimension ?? Dimension.None, other.Unit?.Dimension ?? Dimension.None);
        var factor = factors(Unit?.Factor ?? 1, other.Unit?.Factor ?? 1);
        var unit = other.Unit is null ? Unit : UnitFor(dimension, factor);
        if (unit is null && dimension != Dimension.None)
            return null;
        var result = unit is null ? number * factor : number * factor / unit.Factor;
        return new Amount(result, unit, DecimalsOf(result, Math.Max(Decimals, other.Decimals)), unit is { Offset: not 0 });
    }

    /// <summary>As many as the parts have, more when that would be less than three figures.</summary>
    private static int DecimalsOf(decimal number, int least) =>
        Figures.Trimmed(new Quantity(number, UnitTable.Get("%")).ToFigures(FiguresOfProduct), 0).Decimals is var own && own > least ? own : least;

    /// <summary>The unit that takes the number as it is, or the first of its dimension.</summary>
    private static Unit? UnitFor(Dimension dimension, decimal factor)
    {
        if (dimension == Dimension.None)
            return null;
        var units = UnitTable.All.Where(u => u.Dimension == dimension).ToList();
        return units.FirstOrDefault(u => u.Factor == factor) ?? units.FirstOrDefault();
    }
}
