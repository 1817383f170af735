namespace Witnessmark.Language.Quantities;

/// <summary>
/// The derived unit beside the native one. A derived number is rounded to the coarsest power of ten that is not more than
/// twice the native step, so it neither claims more than the native digits nor loses what they say: 235 N·m is 173 lbf·ft,
/// 5.00 mm is 0.1969 in. Limits are rounded inward: a reading that passes in the derived unit passes in the native one.
/// Where that would take more than half of the window away, a decimal is added: 5 to 6 MPa is 730 to 870 psi.
/// </summary>
public static class DualUnits
{
    private const decimal Twice = 2m;
    private const int MostDecimals = 12;

    /// <param name="difference">A difference (a spread, a resolution) is not shifted by the offset of °C and °F.</param>
    public static Quantity? Beside(Quantity native, bool difference = false) =>
        UnitTable.BesideOf(native.Unit) is { } unit ? Rounding.Nearest(Exact(native, unit, difference), Decimals(native, unit)) : null;

    public static Toleranced? Beside(Toleranced native)
    {
        if (UnitTable.BesideOf(native.Target.Unit) is not { } unit)
            return null;
        var decimals = Decimals(native.Target, unit);
        var target = native.Target.In(unit);
        if (native.Tolerance is not { Number: > 0 } written)
            return new Toleranced(Rounding.Nearest(target, decimals), native.Tolerance is null ? null : new Quantity(0, unit));
        var tolerance = Exact(written, unit, difference: true);
        while (true)
        {
            var rounded = Rounding.Nearest(target, decimals);
            // what rounding moves the target by is taken off the tolerance, or one end would lie outside
            var moved = Math.Abs(rounded.Number - target.Number);
            var left = Rounding.Down(tolerance with { Number = tolerance.Number - moved }, decimals);
            if (left.Number * Twice >= tolerance.Number || decimals >= MostDecimals)
                return new Toleranced(rounded, left.Number < 0 ? new Quantity(0, unit) : left);
            decimals++;
        }
    }

    /// <param name="native">The range as written.</param>
    /// <param name="difference">A difference (a spread, a resolution) is not shifted by the offset of °C and °F.</param>
    public static QuantityRange? Beside(QuantityRange native, bool difference = false)
    {
        if (UnitTable.BesideOf(native.Unit) is not { } unit)
            return null;
        if (native.Low is not { } low || native.High is not { } high)
            return new QuantityRange(Inward(native.Low, unit, difference, +1, 0), Inward(native.High, unit, difference, -1, 0));
        if (low.Value.CompareTo(high.Value) == 0 && Beside(low.Value, difference) is { } single)
            return QuantityRange.Between(single, single);
        var width = Exact(high.Value, unit, difference).Number - Exact(low.Value, unit, difference).Number;
        for (var more = 0; ; more++)
        {
            var range = new QuantityRange(Inward(low, unit, difference, +1, more), Inward(high, unit, difference, -1, more));
            var left = range.High!.Value.Value.Number - range.Low!.Value.Value.Number;
            if (left * Twice >= width || more >= MostDecimals)
                return range;
        }
    }

    /// <summary>
    /// Whether two spellings of one value agree within <paramref name="share"/> (0.02 is the house rule). A share of a
    /// temperature means nothing, so there they agree when they differ by no more than half of the coarser step.
    /// </summary>
    public static bool Agree(Quantity a, Quantity b, decimal share)
    {
        if (!a.Unit.SameKindAs(b.Unit))
            return false;
        var other = b.In(a.Unit).Number;
        var allowed = a.Unit.Offset == 0
            ? share * Math.Max(Math.Abs(a.Number), Math.Abs(other))
            : Math.Max(Step(a), Step(b)) / a.Unit.Factor / 2;
        var apart = Math.Abs(other - a.Number) - allowed;
        return apart <= 0 || Quantity.IsResidue(apart, other);
    }

    /// <summary>A tolerance in another unit, rounded down.</summary>
    internal static Quantity Difference(Quantity difference, Unit unit) =>
        Rounding.Down(Exact(difference, unit, difference: true), Decimals(difference, unit));

    private static Bound? Inward(Bound? bound, Unit unit, bool difference, int toward, int moreDecimals)
    {
        if (bound is not { } end)
            return null;
        var exact = Exact(end.Value, unit, difference);
        var decimals = Decimals(end.Value, unit) + moreDecimals;
        return end with { Value = toward > 0 ? Rounding.Up(exact, decimals) : Rounding.Down(exact, decimals) };
    }

    private static Quantity Exact(Quantity native, Unit unit, bool difference) =>
        difference ? new Quantity(native.Number * native.Unit.Factor / unit.Factor, unit) : native.In(unit);

    /// <summary>What one in the last place is, in SI.</summary>
    private static decimal Step(Quantity written) => written.Unit.Factor / Quantity.TenTo(written.Decimals);

    private static int Decimals(Quantity native, Unit unit)
    {
        var step = Step(native) / unit.Factor;
        var decimals = 0;
        var power = 1m;
        while (power > Twice * step && decimals < MostDecimals)
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
}
