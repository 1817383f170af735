using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>The rules of this topic.</summary>
internal static class StepsTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.Of<InputNotTaken>(),
        Rule.Of<OddsDisagree>(),
        Rule.Of<ReadingWithoutConsequence>(),
        Rule.Of<ResultNotTaken>(),
        Rule.Of<SearchOrderDearer>(),
        Rule.Of<SectionTooLong>(),
        Rule.Of<StepNameForbids>(),
        Rule.Of<StepNameNoOrder>(),
        Rule.Of<StepNameTooWide>(),
        Rule.Of<StepNameTwice>(),
        Rule.Of<StepNamesOneWordApart>(),
        Rule.Of<StepNumberWrong>(),
        Rule.Of<StepTooLong>(),
        Rule.Of<ToolListMissing>(),
        Rule.Of<TorqueInProse>(),
        Rule.Of<BlownWithAir>(),
        Rule.Of<DecisionOpen>(),
        Rule.Of<DecisionTwice>(),
        Rule.Of<SealsTogether>(),
    ];
}
