using System.Globalization;
using Witnessmark.Language.Model;

namespace Witnessmark.Language.Wording;

/// <summary>The small parts of a sentence, the same in every message.</summary>
public static class Say
{
    /// <summary>Behind so many, a list loses its reader.</summary>
    private const int MostListed = 6;

    private const int LongestQuoted = 60;

    /// <summary><c>a, b and c</c></summary>
    public static string And(IEnumerable<string> words) => Joined([.. words], "and");

    /// <summary><c>a, b or c</c></summary>
    public static string Or(IEnumerable<string> words) => Joined([.. words], "or");

    /// <summary><c>a, b and c</c>; a long list ends with how many more there are.</summary>
    public static string Some(IEnumerable<string> words)
    {
        string[] all = [.. words];
        return all.Length > MostListed
            ? $"{string.Join(", ", all[..MostListed])} and {Number(all.Length - MostListed)} more"
            : Joined(all, "and");
    }

    public static string Number(decimal number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary><c>1 bolt</c>, <c>2 bolts</c></summary>
    /// <param name="many">Null: one with an s.</param>
    public static string Count(int number, string one, string? many = null) =>
        $"{Number(number)} {(number == 1 ? one : many ?? one + "s")}";

    /// <summary><c>an impact wrench</c></summary>
    public static string Article(string noun) => noun is ['a' or 'e' or 'i' or 'o' or 'u', ..] ? $"an {noun}" : $"a {noun}";

    /// <summary>Declared names are in lower case; a sentence begins with a capital.</summary>
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary><c>Step 12 of WB-40</c>, at the start of a sentence.</summary>
    public static string Step(StepInPlace place) => Step(place.Procedure, place.Step);

    public static string Step(Procedure procedure, Step step) => $"Step {Number(step.Number)} of {procedure.Id.Value}";

    /// <summary>Text as it is quoted: on one line, cut where a message would lose its reader.</summary>
    public static string Short(string text)
    {
        var line = text.ReplaceLineEndings(" ").Trim();
        return line.Length <= LongestQuoted ? line : line[..LongestQuoted] + "…";
    }

    private static string Joined(string[] words, string last) =>
        words.Length < 2 ? string.Concat(words) : $"{string.Join(", ", words[..^1])} {last} {words[^1]}";
}
