namespace Witnessmark.Language.Quantities;

/// <summary>
/// Rounds to so many decimals; -1 is to tens. A value that is a whole step but for the last digits of a division is that step.
/// </summary>
internal static class Rounding
{
    private const decimal MostExact = 1e27m;

    public static Quantity Nearest(Quantity value, int decimals) => To(value, decimals, s => Math.Round(s, MidpointRounding.AwayFromZero));

    public static Quantity Up(Quantity value, int decimals) => To(value, decimals, Math.Ceiling);

    public static Quantity Down(Quantity value, int decimals) => To(value, decimals, Math.Floor);

    private static Quantity To(Quantity value, int decimals, Func<decimal, decimal> whole)
    {
        var scale = Quantity.TenTo(Math.Abs(decimals));
        // a decimal holds no more digits than this: there is nothing left to round
        if (decimals > 0 && Math.Abs(value.Number) >= MostExact / scale)
            return value;
        var scaled = decimals >= 0 ? value.Number * scale : value.Number / scale;
        var nearest = Math.Round(scaled, MidpointRounding.AwayFromZero);
        var steps = Quantity.IsResidue(scaled - nearest, scaled) ? nearest : whole(scaled);
        return value with { Number = Quantity.WithDecimals(decimals >= 0 ? steps / scale : steps * scale, decimals) };
    }
}
