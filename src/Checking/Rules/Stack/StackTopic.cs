using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Stack;

/// <summary>The rules of this topic.</summary>
internal static class StackTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.OfSheet<StackClearanceMissed>(),
        Rule.OfSheet<StackClearanceTight>(),
        Rule.OfSheet<StackDisagreesWithParts>(),
        Rule.OfSheet<StackEndRubs>(),
        Rule.OfSheet<StackEndUnnamed>(),
        Rule.OfSheet<StackEndsDiffer>(),
        Rule.OfSheet<StackFacingInward>(),
        Rule.OfSheet<StackFacingMissing>(),
        Rule.OfSheet<StackFacingUnknown>(),
        Rule.OfSheet<StackSplineMissing>(),
        Rule.OfSheet<StackThicknessMissing>(),
        Rule.OfSheet<StackTwoAlike>(),
        Rule.OfSheet<StackWearPastSeal>(),
        Rule.OfSheet<WornAtAboveNew>(),
    ];
}
