using Witnessmark.Language.Quantities;

namespace Witnessmark.Language.Wording;

/// <summary>Quantities as they were written, with the other unit system beside.</summary>
public static class Measures
{
    /// <summary><c>235 N·m (173 lbf·ft)</c></summary>
    public static string InBoth(Quantity native) => Pair($"{native}", $"{DualUnits.Beside(native)}");

    /// <summary><c>235 ± 12 N·m (173 ± 8 lbf·ft)</c></summary>
    public static string InBoth(Toleranced native) => Pair($"{native}", $"{DualUnits.Beside(native)}");

    /// <summary><c>4.92 to 5.08 mm (0.1938 to 0.2000 in)</c></summary>
    /// <param name="native">The range as written.</param>
    /// <param name="difference">A difference (a spread, a resolution) is not shifted by the offset of °C and °F.</param>
    public static string InBoth(QuantityRange native, bool difference = false) => Pair($"{native}", $"{DualUnits.Beside(native, difference)}");

    private static string Pair(string native, string beside) => beside.Length == 0 ? native : $"{native} ({beside})";
}
