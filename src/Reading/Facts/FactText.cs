using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Facts;

/// <summary>The value of a fact on its way to being read.</summary>
internal readonly record struct FactText(FactRow Row, Located<string> Text, FindingList Findings)
{
    private const string Why = "A fact that cannot be read is neither checked nor printed, and the step looks complete without it.";

    /// <summary>Says that the value has the wrong shape, and how it should look.</summary>
    public FactValue? Unclear(Located<string>? piece = null, string? found = null, string? putRight = null)
    {
        var at = piece is { Value.Length: > 0 } p ? p : Text;
        Findings.Add(
            StepFaults.FactUnclear,
            at.At,
            found ?? $"`{at.Value}` is not what `{Row.Spelling}` takes: {Row.Says}.",
            Why,
            putRight ?? $"Write it like this: `{Row.Spelling}: {FactExamples.Of(Row.Word)}`.");
        return null;
    }
}
