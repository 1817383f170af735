using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Fasteners;

/// <summary>The rules of this topic.</summary>
internal static class FastenersTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.OfSheet<ClassOutsideSize>(),
        Rule.OfSheet<ClassUnknown>(),
        Rule.OfSheet<FirstPassTooHigh>(),
        Rule.OfSheet<LastPassNotFull>(),
        Rule.OfSheet<MarkOfOtherThread>(),
        Rule.OfSheet<PassesNotRising>(),
        Rule.OfSheet<SequenceNotARound>(),
        Rule.OfSheet<SequenceNotCrossed>(),
        Rule.OfSheet<TorqueWithoutPasses>(),
    ];
}
