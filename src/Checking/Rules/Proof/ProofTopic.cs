using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Proof;

/// <summary>The rules of this topic.</summary>
internal static class ProofTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.OfWays<InterlockBroken>(),
        Rule.OfWays<ContractBroken>(),
        Rule.OfWays<DeviceAstray>(),
        Rule.OfWays<EndNotAsItCame>(),
        Rule.OfWays<StartUnsaid>(),
    ];
}
