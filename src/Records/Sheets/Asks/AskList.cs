using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Sheets;

/// <summary>What a step wants written down, in the order of its facts. To add an ask: a line here and a maker beside it.</summary>
internal static class AskList
{
    /// <param name="turns">Of the loop that the step is done in; null: once.</param>
    public static ImmutableArray<Ask> Of(StepInPlace place, StepNames names, LoopTurns? turns) =>
    [
        .. place.Step.Facts.SelectMany(fact => Of(fact, place, names)).Concat(ToolAsks.Of(place, names)).DistinctBy(a => a.Key)
            .Select(a => turns?.Asked(a) ?? a),
    ];

    private static IEnumerable<Ask> Of(Fact fact, StepInPlace place, StepNames names) => (fact.Word, fact.Value) switch
    {
        (FactWord.Count, Amounts amounts) => amounts.All.Select(a => CountAsks.Of(a, names)),
        (FactWord.Measure or FactWord.Inspect, NameList list) => list.Names.SelectMany(n => ReadingAsks.Of(n.Value, place, names)),
        (FactWord.Test, NameList list) => list.Names.SelectMany(n => TestAsks.Of(n.Value, place, names)),
        (FactWord.WorkOut, NameList list) => list.Names.SelectMany(n => WorkedAsks.Of(n.Value, names)),
        (FactWord.WorkOut, WrenchSetting setting) => TighteningAsks.Setting(setting, names),
        (FactWord.Tighten, Amounts amounts) => TighteningAsks.Passes(amounts, place, names),
        (FactWord.Fit, Amounts amounts) => amounts.All.SelectMany(a => StackAsks.Of(a, names)),
        (FactWord.Decide, NameList list) => list.Names.Select(n => Choice(n.Value, place, names)),
        (FactWord.End, EndingValue end) => [new ChoiceAsk(EntryKeys.End, [end.Name.Value])],
        (FactWord.Hold, SpokenWords words) => [HoldOf(words, place, names)],
        (FactWord.CheckedBy, Checker checker) => [new CheckAsk(EntryKeys.CheckedBy, checker.Role.Value, checker.Mode)],
        _ => [],
    };

    private static ImmutableArray<string> Outcomes(StepInPlace place) =>
        [.. place.Step.All(FactWord.Outcome).Select(f => f.Value).OfType<OutcomeValue>().Select(o => o.Name.Value)];

    private static ChoiceAsk Choice(string name, StepInPlace place, StepNames names) =>
        new(name, Outcomes(place)) { Stops = StopIfs.Of(name, Outcomes(place), place, names) };

    private static HoldAsk HoldOf(SpokenWords words, StepInPlace place, StepNames names) =>
        new(EntryKeys.Hold, [.. names.Shown.In(words.Text.Value).Split("___")], place.Step.Value<Checker>(FactWord.CheckedBy)?.Role.Value);
}
