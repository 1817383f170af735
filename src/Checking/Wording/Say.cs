using System.Globalization;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Wording;

/// <summary>How findings speak of the things of a procedure.</summary>
internal static class Say
{
    /// <summary><c>Step 12 of WB-40</c>, at the start of a sentence.</summary>
    public static string Step(StepInPlace place) => Step(place.Procedure, place.Step);

    public static string Step(Procedure procedure, Step step) => $"Step {step.Number} of {procedure.Id.Value}";

    /// <summary><c>a, b and c</c></summary>
    public static string And(IEnumerable<string> names) => Join(names, "and");

    /// <summary><c>a, b or c</c></summary>
    public static string Or(IEnumerable<string> names) => Join(names, "or");

    /// <summary><c>1 bolt</c>, <c>2 bolts</c></summary>
    public static string Number(int number, string one, string many) =>
        string.Create(CultureInfo.InvariantCulture, $"{number} {(number == 1 ? one : many)}");

    /// <summary><c>an impact wrench</c></summary>
    public static string Article(string noun) => noun is ['a' or 'e' or 'i' or 'o' or 'u', ..] ? $"an {noun}" : $"a {noun}";

    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private static string Join(IEnumerable<string> names, string last)
    {
        string[] all = [.. names];
        return all.Length < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} {last} {all[^1]}";
    }
}
