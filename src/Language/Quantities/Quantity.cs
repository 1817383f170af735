using System.Globalization;

namespace Witnessmark.Language.Quantities;

/// <summary>
/// A number and its unit. The number keeps the decimals that were written: 4.60 is not 4.6, the digits say the resolution.
/// Numbers of up to 18 digits, which is all that is read, go into every unit of their kind without overflow.
/// </summary>
public readonly record struct Quantity(decimal Number, Unit Unit)
{
    private const int MostDecimals = 20;

    /// <summary>Decimals written.</summary>
    public int Decimals => Number.Scale;

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

    /// <summary>Rounded half away from zero; -1 rounds to tens.</summary>
    public Quantity RoundedTo(int decimals) => this with { Number = WithDecimals(Number, decimals) };

    /// <summary>
    /// Smaller, same or larger, across units of one kind. 212 °F is 100 °C: what differs only in the last digits of a
    /// division is the same.
    /// </summary>
    public int CompareTo(Quantity other)
    {
        if (Unit == other.Unit)
            return Number.CompareTo(other.Number);
        var (here, there) = (Unit.ToSi(Number), other.Unit.ToSi(other.Number));
        return IsResidue(here - there, here) ? 0 : here.CompareTo(there);
    }

    /// <summary>As it is printed: <c>455 N·m</c>, <c>12405 h</c>, <c>75 %</c>, <c>50 °C</c>.</summary>
    public override string ToString() => $"{NumberText} {Unit?.Symbol}";

    public string NumberText => Number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Whether a difference is what a decimal of 28 digits leaves of a division that does not come out even.</summary>
    internal static bool IsResidue(decimal difference, decimal size) => Math.Abs(difference) <= 1e-24m * Math.Max(1, Math.Abs(size));

    internal static decimal WithDecimals(decimal number, int decimals)
    {
        if (decimals < 0)
        {
            var ten = TenTo(-decimals);
            return Math.Round(number / ten, MidpointRounding.AwayFromZero) * ten;
        }
        var kept = Math.Min(decimals, MostDecimals);
        var rounded = Math.Round(number, kept, MidpointRounding.AwayFromZero) + new decimal(0, 0, 0, false, (byte)kept);
        return rounded == 0 ? Math.Abs(rounded) : rounded;
    }

    internal static decimal TenTo(int power)
    {
        var ten = 1m;
        for (var i = 0; i < power; i++)
            ten *= 10;
        return ten;
    }
}
