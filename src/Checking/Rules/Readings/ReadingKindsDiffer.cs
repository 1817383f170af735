using Witnessmark.Language.Findings;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>One reading is written with units that measure different things.</summary>
public sealed class ReadingKindsDiffer : IMeasuringRule
{
    public static RuleInfo Info { get; } = new("reading-kinds-differ", "Readings", Severity.Fault);

    public static void Check(Measuring declared, FindingList findings)
    {
        foreach (var reading in declared.Readings)
        {
            // one kind, or no number at all
            if (reading.IsOfOneKind())
                continue;
            var (first, firstAt, firstWhat) = reading.Units().First();
            var (odd, oddAt, oddWhat) = reading.Units().First(u => u.Unit.Kind != first.Kind);
            findings.Add(
                Info,
                oddAt,
                $"{reading.Id.Value} is written in {first.Symbol} ({first.Kind}) under `{firstWhat}` and in {odd.Symbol} ({odd.Kind}) under `{oddWhat}`.",
                "A reading is held against its limits. A length cannot be held against a pressure, so no result would ever follow.",
                $"Write all numbers of {reading.Id.Value} in units of {first.Kind}, or all in units of {odd.Kind}.",
                new FurtherPlace(firstAt, $"{first.Symbol} measures {first.Kind}"));
        }
    }
}
