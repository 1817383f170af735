using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering;

/// <summary>
/// What may be reckoned with. A number that no machine has is refused here, so that no product overflows and no quotient
/// divides by next to nothing.
/// </summary>
internal static class Sensible
{
    private const decimal Largest = 1_000_000_000m;
    private const decimal Smallest = 0.000_000_001m;

    public static bool Is(Quantity quantity, string kind) =>
        quantity.Unit?.Kind == kind && Math.Abs(quantity.Number) <= Largest;

    public static bool Positive(Quantity quantity, string kind) => Is(quantity, kind) && quantity.Number >= Smallest;

    public static bool Share(decimal share) => share is >= 0.001m and <= 10;

    public static bool Number(decimal number) => Math.Abs(number) <= Largest;

    /// <summary>Null when the number is none that a decimal can keep.</summary>
    public static decimal? Exact(double number) => double.IsFinite(number) && Math.Abs(number) <= (double)Largest ? (decimal)number : null;
}
