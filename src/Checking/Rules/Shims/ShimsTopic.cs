using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Shims;

/// <summary>The rules of this topic.</summary>
internal static class ShimsTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.OfSheet<ShimDirectionMissing>(),
        Rule.OfSheet<ShimTargetOutside>(),
        Rule.OfSheet<ShimWindowBelowStep>(),
        Rule.OfSheet<ShimsOutOfReach>(),
    ];
}
