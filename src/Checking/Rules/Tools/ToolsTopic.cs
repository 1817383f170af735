using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Tools;

/// <summary>The rules of this topic.</summary>
internal static class ToolsTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.Of<AdapterWithoutLength>(),
        Rule.Of<GaugeMeasuresOther>(),
        Rule.Of<GaugeNotCalibrated>(),
        Rule.Of<GaugeNotOnList>(),
        Rule.Of<GaugeOutOfRange>(),
        Rule.Of<GaugeTooCoarse>(),
        Rule.Of<ImpactForFinal>(),
        Rule.Of<PassBelowWrench>(),
        Rule.Of<SettingOffTheScale>(),
        Rule.Of<TightenedWithoutWrench>(),
        Rule.Of<WrenchAtEndOfScale>(),
        Rule.Of<WrenchInOtherUnit>(),
        Rule.Of<WrenchOutOfRange>(),
    ];
}
