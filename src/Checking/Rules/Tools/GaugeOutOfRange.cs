using Witnessmark.Checking.Rules.Readings;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Tools;

/// <summary>A gauge does not reach everything that a reading may come out at.</summary>
public sealed class GaugeOutOfRange : IProcedureRule
{
    public static RuleInfo Info { get; } = new("gauge-out-of-range", "Tools", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var use in GaugeUse.In(scope))
        {
            // both must say how far they go
            if (use.Gauge.Range is not { } range || use.Reading.Plausible is not { } plausible)
                continue;
            // a gauge for something else is another fault
            if (use.Gauge.Kind() != use.Reading.Kind())
                continue;
            // it reaches both ends
            if (Reaches(range.Value, plausible.Value))
                continue;
            var reaching = scope.ToolLists
                .SelectMany(t => t.Gauges)
                .Where(g => g.Kind() == use.Reading.Kind() && g.Range is { } r && Reaches(r.Value, plausible.Value))
                .Select(g => g.Id.Value)
                .ToList();
            findings.Add(
                Info,
                use.At,
                $"{use.Gauge.Id.Value} goes {range.Value}, but {use.Reading.Id.Value} may come out at {plausible.Value}.",
                "A part at the end of what is plausible does not fit the gauge, or the pointer stands at its stop and the number is made up.",
                reaching.Count > 0
                    ? $"Name a gauge that reaches both ends: {Say.Or(reaching)}."
                    : $"Put a gauge that goes {plausible.Value} or further on the tool list, or narrow what is plausible.",
                new FurtherPlace(range.At, $"goes {range.Value}"),
                new FurtherPlace(plausible.At, $"plausible: {plausible.Value}"));
        }
    }

    private static bool Reaches(QuantityRange gauge, QuantityRange plausible) =>
        (gauge.Low is not { } low || (plausible.Low is { } least && low.Value.CompareTo(least.Value) <= 0))
        && (gauge.High is not { } high || (plausible.High is { } most && high.Value.CompareTo(most.Value) >= 0));
}
