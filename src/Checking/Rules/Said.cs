using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Rules;

/// <summary>Numbers and names as messages say them.</summary>
internal static class Said
{
    /// <summary><c>235 N·m (173 lbf·ft)</c></summary>
    public static string InBoth(Quantity native) => Pair($"{native}", DualUnits.Beside(native)?.ToString());

    /// <summary><c>235 ± 12 N·m (173 ± 8 lbf·ft)</c></summary>
    public static string InBoth(Toleranced native) => Pair($"{native with { Beside = null }}", DualUnits.Beside(native)?.ToString());

    /// <summary><c>2.8 to 3.6 mm (0.112 to 0.140 in)</c></summary>
    public static string InBoth(QuantityRange native) => Pair($"{native}", DualUnits.Beside(native)?.ToString());

    /// <summary>A name without its hyphens: <c>backing ring bolts</c>.</summary>
    public static string Words(this Located<string> name) => name.Value.Replace('-', ' ');

    /// <summary><c>an impact wrench</c></summary>
    public static string Article(string noun) => noun is ['a' or 'e' or 'i' or 'o' or 'u', ..] ? $"an {noun}" : $"a {noun}";

    /// <summary>The first letter large, as a sentence begins.</summary>
    public static string Sentence(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary><c>a, b and c</c></summary>
    public static string And(IEnumerable<string> all) => Join([.. all], "and");

    /// <summary><c>a, b or c</c></summary>
    public static string Or(IEnumerable<string> all) => Join([.. all], "or");

    private static string Join(IReadOnlyList<string> all, string last) => all.Count switch
    {
        0 => "",
        1 => all[0],
        _ => $"{string.Join(", ", all.Take(all.Count - 1))} {last} {all[^1]}",
    };

    private static string Pair(string native, string? beside) => beside is null ? native : $"{native} ({beside})";
}
