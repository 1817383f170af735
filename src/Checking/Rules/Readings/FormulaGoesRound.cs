using Witnessmark.Language.Findings;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>A value is worked out from itself.</summary>
public sealed class FormulaGoesRound : IMeasuringRule
{
    public static RuleInfo Info { get; } = new("formula-goes-round", "Readings", Severity.Fault);

    public static void Check(Measuring declared, FindingList findings)
    {
        var known = FormulaNames.Of(declared);
        foreach (var value in declared.Values)
        {
            // nothing behind it leads back to it
            if (value.Formula is not { } formula || !known.BehindValue(value.Id.Value).Contains(value.Id.Value))
                continue;
            findings.Add(
                Info,
                formula.At,
                $"{value.Id.Value} is worked out from itself: {formula.Value}.",
                "To work it out it would have to be known already. No two people come to the same number that way.",
                $"Work {value.Id.Value} out from what is measured. If another value was meant, write its name.");
        }
    }
}
