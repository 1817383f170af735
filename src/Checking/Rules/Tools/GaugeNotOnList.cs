using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Tools;

/// <summary>A step takes a reading whose gauge is not on the tool lists of the procedure.</summary>
public sealed class GaugeNotOnList : IProcedureRule
{
    public static RuleInfo Info { get; } = new("gauge-not-on-list", "Tools", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        // without a tool list nothing is known about tools
        if (scope.ToolLists.IsEmpty)
            return;
        foreach (var place in scope.Procedure.Walk())
        {
            // nothing measured
            if (place.Step.Find(FactWord.Measure) is null)
                continue;
            // the step names a gauge of its own
            if (GaugeUse.Named(scope, place).Any())
                continue;
            foreach (var reading in GaugeUse.Measured(scope, place))
                if (reading.Gauge is { } gauge && scope.Tool(gauge.Value) is null)
                    Report(scope, place, reading, gauge, findings);
        }
    }

    private static void Report(Scope scope, StepInPlace place, ReadingItem reading, Located<string> gauge, FindingList findings)
    {
        var lists = Say.And(scope.ToolLists.Select(t => t.Id.Value));
        var meant = NearMiss.Of(gauge.Value, scope.ToolLists.SelectMany(t => t.Gauges.Names));
        findings.Add(
            Info,
            gauge.At,
            $"{reading.Id.Value} is taken with {gauge.Value}, which is not on {lists}.",
            "The crew drives out without the gauge and measures with what is at hand.",
            meant is null ? $"Put {gauge.Value} on the list, or name a gauge that is on it." : $"Did you mean {meant}?",
            new FurtherPlace(place.Step.Find(FactWord.Measure)!.At, $"step {place.Step.Number} of {place.Procedure.Id.Value} takes the reading"));
    }
}
