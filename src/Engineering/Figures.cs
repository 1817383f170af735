using System.Globalization;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering;

/// <summary>Numbers as a worked line shows them: rounded half away from zero, never fewer digits before the point.</summary>
public static class Figures
{
    private const int MostDecimals = 12;

    /// <summary>With at most so many figures: 97.53 kN and 130.0 kN with four. Whole numbers keep all theirs, and none gets decimals it has not.</summary>
    public static Quantity ToFigures(this Quantity quantity, int figures) =>
        quantity.RoundedTo(Math.Min(quantity.Decimals, Decimals(quantity.Number, figures)));

    /// <summary>A share as percent: <c>102 %</c>, or <c>94.7 %</c> with one decimal.</summary>
    public static string Percent(decimal share, int decimals = 0) => $"{Fixed(share * 100, decimals)} %";

    internal static string Fixed(decimal number, int decimals) =>
        Math.Round(number, decimals, MidpointRounding.AwayFromZero).ToString($"F{decimals}", CultureInfo.InvariantCulture);

    /// <summary>With a proper minus sign, as it stands in a line.</summary>
    internal static string Signed(Quantity quantity) => quantity.ToString().Replace('-', '−');

    internal static string Plain(decimal number) => number.ToString("0.############", CultureInfo.InvariantCulture);

    /// <summary>Without closing zeros, but at least <paramref name="least"/> decimals: 3.20 is 3.2, 8.00 is 8.0, 3.24 stays.</summary>
    internal static Quantity Trimmed(Quantity quantity, int least)
    {
        var decimals = Math.Min(quantity.Decimals, MostDecimals);
        while (decimals > least && quantity.RoundedTo(decimals - 1).Number == quantity.Number)
            decimals--;
        return quantity.RoundedTo(Math.Max(decimals, least));
    }

    private static int Decimals(decimal number, int figures)
    {
        var before = 0;
        for (var rest = Math.Abs(number); rest >= 1; rest /= 10)
            before++;
        if (before > 0 || number == 0)
            return Math.Max(0, figures - Math.Max(before, 1));
        var zeros = 0;
        for (var rest = Math.Abs(number) * 10; rest < 1 && zeros < MostDecimals; rest *= 10)
            zeros++;
        return Math.Min(MostDecimals, zeros + figures);
    }
}
