using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Counts;

/// <summary>The rules of this topic.</summary>
internal static class CountsTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.Of<AmountOver>(),
        Rule.Of<AmountTotalWrong>(),
        Rule.Of<CountDisagrees>(),
        Rule.Of<FastenersLeftOut>(),
        Rule.Of<GroupLeftLoose>(),
        Rule.Of<SetBroken>(),
        Rule.Of<SingleUseNotNew>(),
    ];
}
