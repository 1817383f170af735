using System.Text.RegularExpressions;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Facts;

/// <summary>What is wrong with a clause that could not be read, and how it should stand.</summary>
internal static partial class UnclearConditions
{
    private const string Why = "A condition that cannot be read cannot be proved, and the crew would work without it.";
    private const string Shape = "Write `thing = value`, for example `guide-studs = placed`, `lock-pins = all engaged` or `piston is not fitted`.";

    public static Finding Of(Located<string> text)
    {
        var (found, putRight) = Explain(text.Value);
        return new Finding(StepFaults.ConditionUnclear, text.At, found, Why, putRight);
    }

    private static (string Found, string PutRight) Explain(string text)
    {
        if (text.Length == 0)
            return ("A condition is missing here.", Shape);
        if (Comparison.IsMatch(text))
            return ($"`{text}` compares a number in a condition.", "Name the band instead, as in `accumulator-pressure = zero`. The numbers stand once, in the bands of the reading.");
        if (text.Contains("!=", StringComparison.Ordinal) || NotBehindSign.IsMatch(text))
            return ($"`{text}` says no in a way that is not read.", $"Write `{Tidy(NotBehindSign.Replace(text.Replace("!=", " is not ", StringComparison.Ordinal), " is not "))}`.");
        if (text.Contains("==", StringComparison.Ordinal))
            return ($"`{text}` has two equals signs.", $"Write `{Tidy(text.Replace("==", " = ", StringComparison.Ordinal))}`.");
        if (And.IsMatch(text))
            return ($"`{text}` joins two conditions with a word.", $"A comma is *and*: write `{And.Replace(text, ", ")}`.");
        if (Spelling.Sign.Count(text) > 1)
            return ($"`{text}` has more than one value sign.", "Put a comma between two conditions. *Or* stands only between values of one thing: `support = on-jack or on-stand`.");
        return ExplainSides(text);
    }

    private static (string Found, string PutRight) ExplainSides(string text)
    {
        if (text.EndsWith('=') || text.EndsWith(" is not", StringComparison.Ordinal))
            return ($"`{text}` names no value.", $"Write the value behind it: `{text} …`.");
        if (text.StartsWith('='))
            return ($"`{text}` names no thing.", "Write in front of it what has this value.");
        if (Is.IsMatch(text))
            return ($"`{text}` has *is* where the equals sign belongs.", $"Write `{Is.Replace(text, " = ")}`.");
        if (Colon.IsMatch(text))
            return ($"`{text}` has a colon where the equals sign belongs.", $"Write `{Colon.Replace(text.Trim('{', '}', ' '), " = ")}`.");
        if (TwoNames.Match(text) is { Success: true } two)
            return ($"`{text}` has no equals sign.", $"Write `{two.Groups[1].Value} = {two.Groups[2].Value}`.");
        return ($"`{text}` is not a condition that can be read.", Shape);
    }

    private static string Tidy(string text) => Blanks.Replace(text, " ");

    [GeneratedRegex("[<>≤≥]")]
    private static partial Regex Comparison { get; }

    [GeneratedRegex(" *=+ *not +")]
    private static partial Regex NotBehindSign { get; }

    [GeneratedRegex(" +(?:and|&&?) +")]
    private static partial Regex And { get; }

    [GeneratedRegex(" +is +")]
    private static partial Regex Is { get; }

    [GeneratedRegex(" *: *")]
    private static partial Regex Colon { get; }

    [GeneratedRegex("^(" + Spelling.Name + ") +(" + Spelling.Name + ")$")]
    private static partial Regex TwoNames { get; }

    [GeneratedRegex(" +")]
    private static partial Regex Blanks { get; }
}
