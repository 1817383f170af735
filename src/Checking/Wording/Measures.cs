using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Wording;

/// <summary>How findings speak of quantities: as written, with the other system beside.</summary>
internal static class Measures
{
    /// <summary><c>235 N·m (173 lbf·ft)</c></summary>
    public static string InBoth(Quantity native) => Pair($"{native}", DualUnits.Beside(native)?.ToString());

    /// <summary><c>235 ± 12 N·m (173 ± 8 lbf·ft)</c></summary>
    public static string InBoth(Toleranced native) => Pair($"{native}", DualUnits.Beside(native)?.ToString());

    /// <summary><c>2.8 to 3.6 mm (0.11 to 0.14 in)</c></summary>
    public static string InBoth(QuantityRange native) => Pair($"{native}", DualUnits.Beside(native)?.ToString());

    /// <summary>A declared name without its hyphens: <c>backing ring bolts</c>.</summary>
    public static string Spoken(this Located<string> name) => name.Value.Replace('-', ' ');

    private static string Pair(string native, string? beside) => beside is null ? native : $"{native} ({beside})";
}
