using System.Globalization;

namespace Witnessmark.Language.Quantities;

/// <summary>A number and its unit. The number keeps the decimals that were written: 4.60 is not 4.6, the digits say the resolution.</summary>
public readonly record struct Quantity(decimal Number, Unit Unit)
{
    /// <summary>Decimals written.</summary>
    public int Decimals => (decimal.GetBits(Number)[3] >> 16) & 0xFF;

    public double Si => (double)Unit.ToSi(Number);

    public static Quantity Of(decimal number, string unit) => new(number, UnitTable.Get(unit));

    /// <summary>The same amount in another unit of its kind, not rounded.</summary>
    public Quantity In(Unit unit)
    {
        if (!Unit.SameKindAs(unit))
            throw new ArgumentException($"{Unit} is {Unit.Kind}, {unit} is {unit.Kind}", nameof(unit));
        return unit == Unit ? this : new Quantity(unit.FromSi(Unit.ToSi(Number)), unit);
    }

    public double In(string unit) => (double)In(UnitTable.Get(unit)).Number;

    public Quantity RoundedTo(int decimals) => this with { Number = WithDecimals(Number, decimals) };

    /// <summary>Smaller, same or larger, across units of one kind.</summary>
    public int CompareTo(Quantity other) => Unit == other.Unit ? Number.CompareTo(other.Number) : Unit.ToSi(Number).CompareTo(other.Unit.ToSi(other.Number));

    /// <summary>As it is printed: <c>455 N·m</c>, <c>12 405 h</c>, <c>75 %</c>, <c>50 °C</c>.</summary>
    public override string ToString() => $"{NumberText} {Unit.Symbol}";

    public string NumberText => Number.ToString(CultureInfo.InvariantCulture);

    internal static decimal WithDecimals(decimal number, int decimals)
    {
        var rounded = Math.Round(number, Math.Clamp(decimals, 0, 20), MidpointRounding.AwayFromZero);
        return decimals <= 0 ? decimal.Truncate(rounded) : rounded + new decimal(0, 0, 0, false, (byte)Math.Min(decimals, 20));
    }
}
