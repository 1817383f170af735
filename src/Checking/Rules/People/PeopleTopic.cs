using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.People;

/// <summary>The rules of this topic.</summary>
internal static class PeopleTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.Of<AnswerWithoutValue>(),
        Rule.Of<CallWithoutAnswer>(),
        Rule.Of<CheckerDidTheWork>(),
        Rule.Of<CrewMissing>(),
        Rule.Of<LiftOnePerson>(),
        Rule.Of<LiftWithoutCall>(),
        Rule.Of<RoleNotInCrew>(),
        Rule.Of<StepWithoutDoer>(),
        Rule.Of<StepWithoutZone>(),
        Rule.Of<VerifiedWithoutChecker>(),
    ];
}
