using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Release;

/// <summary>The rules of this topic.</summary>
internal static class ReleaseTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.Of<ApplicabilityMissing>(),
        Rule.Of<ApprovalMissing>(),
        Rule.Of<ApprovalDateUnclear>(),
        Rule.Of<ApproverIsAuthor>(),
        Rule.Of<ApproverOutOfRole>(),
        Rule.Of<AuthorMissing>(),
        Rule.Of<BasisMissing>(),
        Rule.Of<DraftPerformed>(),
        Rule.Of<InitialsUnknown>(),
        Rule.Of<PositionUnknown>(),
        Rule.Of<SerialsOutsideMachine>(),
    ];
}
