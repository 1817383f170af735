using System.Globalization;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving;

/// <summary>Words for findings.</summary>
internal static class Say
{
    private const int MostListed = 6;

    public static string Name(string key) => Wording.Shown(key);

    /// <summary><c>a, b and c</c>; a long list ends with how many more there are.</summary>
    public static string List(IEnumerable<string> items)
    {
        var all = items.ToList();
        if (all.Count > MostListed)
            return $"{string.Join(", ", all.Take(MostListed))} and {Number(all.Count - MostListed)} more";
        return all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all.SkipLast(1))} and {all[^1]}";
    }

    public static string Or(IEnumerable<string> items)
    {
        var all = items.ToList();
        return all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all.SkipLast(1))} or {all[^1]}";
    }

    public static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    public static string Number(decimal number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary><c>1 reading</c>, <c>3 readings</c></summary>
    public static string Of(int number, string one, string? many = null) => $"{Number(number)} {(number == 1 ? one : many ?? one + "s")}";

    /// <summary>Declared names are in lower case; a sentence begins with a capital.</summary>
    public static string Sentence(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
