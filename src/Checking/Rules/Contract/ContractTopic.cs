using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Contract;

/// <summary>The rules of this topic.</summary>
internal static class ContractTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.Of<HandOverUnsafe>(),
        Rule.Of<LandWithoutLift>(),
        Rule.Of<LoadLeftHanging>(),
        Rule.Of<PromiseWithoutWork>(),
        Rule.OfSheet<SafeStopUnsaid>(),
        Rule.Of<DebtNotOwed>(),
    ];
}
