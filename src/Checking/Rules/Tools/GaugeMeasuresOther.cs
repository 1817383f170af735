using Witnessmark.Checking.Rules.Readings;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Tools;

/// <summary>A reading is taken with a gauge that measures something else.</summary>
public sealed class GaugeMeasuresOther : IProcedureRule
{
    public static RuleInfo Info { get; } = new("gauge-measures-other", "Tools", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var use in GaugeUse.In(scope))
        {
            // without numbers on both sides nothing can be compared
            if (use.Gauge.Kind() is not { } measures || use.Reading.Kind() is not { } wanted)
                continue;
            // the right kind
            if (measures == wanted)
                continue;
            var fitting = scope.ToolLists.SelectMany(t => t.Gauges).Where(g => g.Kind() == wanted).Select(g => g.Id.Value).ToList();
            findings.Add(
                Info,
                use.At,
                $"{use.Gauge.Id.Value} measures {measures}; {use.Reading.Id.Value} is {Say.Article(wanted)} ({use.Reading.Units().First().Unit.Symbol}).",
                "Nobody can take the reading with it. On the job another gauge is taken, and which one is not written down.",
                fitting.Count > 0 ? $"Name a gauge for {wanted}: {Say.Or(fitting)}." : $"Put a gauge for {wanted} on the tool list and name it here.",
                new FurtherPlace((use.Gauge.Range?.At ?? use.Gauge.Resolution?.At)!.Value, $"measures {measures}"));
        }
    }
}
