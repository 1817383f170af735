using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>The rules of this topic.</summary>
internal static class MessagesTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.Of<HazardWithoutMessage>(),
        Rule.Of<MessageIdle>(),
        Rule.Of<MessageLate>(),
        Rule.Of<MessageTooTall>(),
        Rule.Of<MessageWithoutAvoidance>(),
        Rule.Of<MessageWithoutConsequence>(),
        Rule.Of<MessageWithoutHazard>(),
        Rule.Of<NumberOnlyInMessage>(),
        Rule.Of<SignalWordUnknown>(),
        Rule.Of<SignalWordWrong>(),
        Rule.Of<WeakerMessageFirst>(),
        Rule.Of<WorkInMessage>(),
        Rule.Of<SubstituteWithoutMessage>(),
    ];
}
