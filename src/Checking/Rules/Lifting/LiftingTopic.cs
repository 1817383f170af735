using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Lifting;

/// <summary>The rules of this topic.</summary>
internal static class LiftingTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.OfSheet<ByHandTooHeavy>(),
        Rule.Of<CraneOverloaded>(),
        Rule.Of<CraneRadiusMissing>(),
        Rule.Of<HeavyPartByHand>(),
        Rule.OfSheet<LoadWithoutGear>(),
        Rule.Of<SlingAngleMissing>(),
        Rule.Of<SlingOverloaded>(),
        Rule.OfSheet<SlingTooFlat>(),
    ];
}
