using System.Collections.Frozen;
using Witnessmark.Language.Model;

namespace Witnessmark.Reading.Facts;

/// <summary>How the value of each fact is read: one line a word, as in the table of facts.</summary>
internal static class FactValues
{
    private static readonly FrozenDictionary<FactWord, Func<FactText, FactValue?>> Readers = new Dictionary<FactWord, Func<FactText, FactValue?>>
    {
        [FactWord.StartsWith] = ConditionFacts.Condition,
        [FactWord.EndsWith] = ConditionFacts.Condition,
        [FactWord.ForEach] = FlowFacts.Loop,
        [FactWord.Until] = ConditionFacts.Condition,
        [FactWord.Odds] = TimeFacts.Odds,
        [FactWord.Owes] = TimeFacts.Debt,
        [FactWord.By] = NameFacts.WordList,
        [FactWord.Zone] = NameFacts.One,
        [FactWord.Tools] = NameFacts.List,
        [FactWord.OnlyIf] = ConditionFacts.Condition,
        [FactWord.Time] = TimeFacts.Minutes,
        [FactWord.Remove] = AmountFacts.Handled,
        [FactWord.Fit] = AmountFacts.Handled,
        [FactWord.Loosen] = AmountFacts.Handled,
        [FactWord.Snug] = AmountFacts.Handled,
        [FactWord.Tighten] = AmountFacts.Handled,
        [FactWord.Place] = AmountFacts.Handled,
        [FactWord.Recover] = AmountFacts.Handled,
        [FactWord.Count] = AmountFacts.Counted,
        [FactWord.Drain] = NameFacts.One,
        [FactWord.Fill] = NameFacts.One,
        [FactWord.Measure] = NameFacts.List,
        [FactWord.Inspect] = NameFacts.List,
        [FactWord.Test] = NameFacts.One,
        [FactWord.WorkOut] = NameFacts.WorkOut,
        [FactWord.Lift] = NameFacts.One,
        [FactWord.Land] = NameFacts.Landing,
        [FactWord.Decide] = NameFacts.One,
        [FactWord.Outcome] = ConditionFacts.Outcome,
        [FactWord.StopIf] = ConditionFacts.StopIf,
        [FactWord.Requires] = ConditionFacts.Condition,
        [FactWord.Leaves] = ConditionFacts.Left,
        [FactWord.AgainFrom] = FlowFacts.Again,
        [FactWord.End] = FlowFacts.Ending,
        [FactWord.Perform] = FlowFacts.Perform,
        [FactWord.Tool] = NameFacts.List,
        [FactWord.Call] = PeopleFacts.Spoken,
        [FactWord.Answer] = PeopleFacts.Spoken,
        [FactWord.Wait] = TimeFacts.Waiting,
        [FactWord.Was] = NameFacts.StepName,
        [FactWord.CheckedBy] = PeopleFacts.Checker,
        [FactWord.Checks] = NameFacts.StepName,
        [FactWord.Hold] = PeopleFacts.Spoken,
        [FactWord.HandOver] = PeopleFacts.HandOver,
        [FactWord.Original] = NameFacts.One,
    }.ToFrozenDictionary();

    public static FactValue? Read(FactText fact) => Readers[fact.Row.Word](fact);
}
