using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>The rules of this topic.</summary>
internal static class ReadingsTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.OfMeasuring<AcceptedKindDiffers>(),
        Rule.OfMeasuring<AcceptedStackUnknown>(),
        Rule.OfMeasuring<BandOutOfReach>(),
        Rule.OfMeasuring<BandsGap>(),
        Rule.OfMeasuring<BandsOverlap>(),
        Rule.OfMeasuring<FormulaGoesRound>(),
        Rule.OfMeasuring<FormulaKindsDiffer>(),
        Rule.OfMeasuring<FormulaUnknownName>(),
        Rule.OfMeasuring<FormulaUnreadable>(),
        Rule.OfMeasuring<PointNamesDisagree>(),
        Rule.OfMeasuring<ReadingKindsDiffer>(),
        Rule.OfMeasuring<ResolutionTooCoarse>(),
        Rule.Of<MeasuredTooEarly>(),
        Rule.OfMeasuring<TestLoadUnsaid>(),
    ];
}
