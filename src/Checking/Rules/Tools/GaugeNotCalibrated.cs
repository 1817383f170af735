using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Tools;

/// <summary>A part is judged with a gauge that nobody calibrates.</summary>
public sealed class GaugeNotCalibrated : IProcedureRule
{
    public static RuleInfo Info { get; } = new("gauge-not-calibrated", "Tools", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var use in GaugeUse.In(scope))
        {
            // calibrated, or the list does not say
            if (use.Gauge.Calibrated is not { Value: false } calibrated)
                continue;
            // a reading that decides nothing may be rough
            if (use.Reading.Bands.IsEmpty)
                continue;
            findings.Add(
                Info,
                use.At,
                $"{use.Reading.Id.Value} decides between {Say.And(use.Reading.Bands.Select(b => b.Name.Value))}, and {use.Gauge.Id.Value} is not calibrated.",
                "Nobody knows how far the gauge is off, so the limit is not where the sheet says it is.",
                "Name a calibrated gauge, or have this one calibrated and say so in the tool list.",
                new FurtherPlace(calibrated.At, "not calibrated"));
        }
    }
}
