namespace Witnessmark.Language.Quantities;

/// <summary>
/// The derived unit beside the native one. A derived number is rounded to the coarsest power of ten that is not more than
/// twice the native step, so it neither claims more than the native digits nor loses what they say: 235 N·m is 173 lbf·ft,
/// 5.00 mm is 0.1969 in. Limits are rounded inward: a reading that passes in the derived unit passes in the native one.
/// </summary>
public static class DualUnits
{
    private const decimal Twice = 2m;

    public static Quantity? Beside(Quantity native) =>
        UnitTable.BesideOf(native.Unit) is { } unit ? Round(native.In(unit), Decimals(native, unit), 0) : null;

    public static Toleranced? Beside(Toleranced native)
    {
        if (UnitTable.BesideOf(native.Target.Unit) is not { } unit)
            return null;
        var decimals = Decimals(native.Target, unit);
        var target = Round(native.Target.In(unit), decimals, 0);
        // a tolerance is a difference: offset scales (°C, °F) do not shift it
        Quantity? tolerance = native.Tolerance is { } t
            ? Round(new Quantity(t.Number * native.Target.Unit.Factor / unit.Factor, unit), decimals, -1)
            : null;
        return new Toleranced(target, tolerance);
    }

    /// <summary>A difference in another unit, rounded down: the offset of °C and °F does not shift it.</summary>
    internal static Quantity Difference(Quantity difference, Unit unit) =>
        Round(new Quantity(difference.Number * difference.Unit.Factor / unit.Factor, unit), Decimals(difference, unit), -1);

    public static QuantityRange? Beside(QuantityRange native)
    {
        if (UnitTable.BesideOf(native.Unit) is not { } unit)
            return null;
        return new QuantityRange(
            native.Low is { } low ? low with { Value = Round(low.Value.In(unit), Decimals(low.Value, unit), +1) } : null,
            native.High is { } high ? high with { Value = Round(high.Value.In(unit), Decimals(high.Value, unit), -1) } : null);
    }

    /// <summary>Whether two spellings of one value agree within <paramref name="share"/> (0.02 is the house rule).</summary>
    public static bool Agree(Quantity a, Quantity b, decimal share)
    {
        if (!a.Unit.SameKindAs(b.Unit))
            return false;
        var other = b.In(a.Unit).Number;
        return Math.Abs(other - a.Number) <= share * Math.Max(Math.Abs(a.Number), Math.Abs(other));
    }

    private static int Decimals(Quantity native, Unit unit)
    {
        var step = native.Unit.Factor / unit.Factor;
        for (var i = 0; i < native.Decimals; i++)
            step /= 10;
        var decimals = 0;
        var power = 1m;
        while (power > Twice * step && decimals < 12)
        {
            power /= 10;
            decimals++;
        }
        while (power * 10 <= Twice * step)
        {
            power *= 10;
            decimals--;
        }
        return decimals;
    }

    /// <param name="toward">-1 down, 0 nearest, +1 up.</param>
    private static Quantity Round(Quantity value, int decimals, int toward)
    {
        var scale = 1m;
        for (var i = 0; i < Math.Abs(decimals); i++)
            scale *= 10;
        var scaled = decimals >= 0 ? value.Number * scale : value.Number / scale;
        // a value that is a whole step but for the last digits of the division is that step
        var nearest = Math.Round(scaled, MidpointRounding.AwayFromZero);
        var steps = toward == 0 || Math.Abs(scaled - nearest) < 0.000000001m ? nearest : toward > 0 ? Math.Ceiling(scaled) : Math.Floor(scaled);
        return value with { Number = Quantity.WithDecimals(decimals >= 0 ? steps / scale : steps * scale, decimals) };
    }
}
