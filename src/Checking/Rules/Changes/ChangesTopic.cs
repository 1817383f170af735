using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Changes;

/// <summary>The rules of this topic.</summary>
internal static class ChangesTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.OfHouseChange<GuardLoosened>(),
        Rule.OfChange<HazardApprovalsShort>(),
        Rule.OfChange<RemovalUnsaid>(),
        Rule.OfChange<VersionStepShort>(),
        Rule.OfSheet<BasisSuperseded>(),
    ];
}
