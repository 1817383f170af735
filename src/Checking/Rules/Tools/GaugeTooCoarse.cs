using Witnessmark.Checking.Rules.Readings;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Tools;

/// <summary>A reading asks for smaller steps than its gauge shows.</summary>
public sealed class GaugeTooCoarse : IProcedureRule
{
    public static RuleInfo Info { get; } = new("gauge-too-coarse", "Tools", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var use in GaugeUse.In(scope))
        {
            // both must say how fine they are
            if (use.Gauge.Resolution is not { } shown || use.Reading.Resolution is not { } wanted)
                continue;
            // a gauge for something else is another fault
            if (use.Gauge.Kind() != use.Reading.Kind() || !shown.Value.Unit.SameKindAs(wanted.Value.Unit))
                continue;
            // it shows what is asked for, or finer
            if (shown.Value.CompareTo(wanted.Value) <= 0)
                continue;
            findings.Add(
                Info,
                use.At,
                $"{use.Gauge.Id.Value} shows steps of {shown.Value}; {use.Reading.Id.Value} is to be read to {wanted.Value}.",
                "The last digit in the box would be a guess, and the part is judged by it.",
                $"Name a gauge that shows {wanted.Value}, or ask for {shown.Value} if that is fine enough for the limits.",
                new FurtherPlace(shown.At, $"steps of {shown.Value}"),
                new FurtherPlace(wanted.At, $"read to {wanted.Value}"));
        }
    }
}
