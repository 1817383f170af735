using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist.InWords;
using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Site.Drawings;

/// <summary>What is decided at a step and where each outcome leads: a decision, or a reading or value for which the step stops.</summary>
internal sealed record DecisionDrawing(SheetPlan Plan, SheetStep Step, Words Words)
{
    private const string Outside = "outside";

    public Drawing? Of(Ask ask)
    {
        var decision = ask switch
        {
            ChoiceAsk choice => Outcomes(choice),
            ReadingAsk { Stops.IsEmpty: false } reading => Bands(reading),
            WorkedAsk { Accept: not null } worked when StopText(worked.Key, Outside) is not null => Value(worked),
            _ => null,
        };
        return decision is { Branches.IsEmpty: false }
            ? new Drawing(DecisionFlow.Draw(FigureId.Of($"decision-{Step.Asks.IndexOf(ask) + 1}", Step, 0), decision, Words), $"{Words.Decision}: {decision.Asked}")
            : null;
    }

    private Decision Outcomes(ChoiceAsk choice) => new(DeclaredName.Spoken(choice.Key),
    [
        .. from fact in Step.Step.All(FactWord.Outcome)
           let outcome = fact.Value as OutcomeValue
           where outcome is not null
           let stop = StopText(choice.Key, outcome.Name.Value)
           select new Branch(DeclaredName.Spoken(outcome.Name.Value), When(outcome), stop ?? Then(choice.Key, outcome.Name.Value), stop is not null),
    ]);

    private Decision Bands(ReadingAsk ask) => new(DeclaredName.Spoken(ask.Reading.Id.Value),
    [
        .. from band in ask.Reading.Bands
           let stops = ask.Stops.Contains(band.Name.Value)
           let range = new QuantityWords(Words).Text(band.Range.Value)
           select new Branch(DeclaredName.Spoken(band.Name.Value), [range], stops ? Stop(ask.Reading.Outside?.Value) : GoOn(ask.Key, band.Name.Value), stops),
    ]);

    private Decision Value(WorkedAsk ask) => new(DeclaredName.Spoken(ask.Value.Id.Value),
    [
        new(Words.WithinLimits, [new QuantityWords(Words).Text(ask.Accept!.Value)], GoOn(ask.Key, Words.WithinLimits), false),
        new(Words.Outside.ToLowerInvariant(), [Words.Otherwise], Stop(ask.Value.Outside?.Value), true),
    ]);

    private ImmutableArray<string> When(OutcomeValue outcome)
    {
        var conditions = new ConditionText(Plan.Scope, Words, Step.Fills.In);
        return outcome.Otherwise ? [Words.Otherwise] : [.. outcome.When.Select(conditions.Of)];
    }

    /// <summary>The steps that are done only with this outcome, or the next one.</summary>
    private string Then(string name, string outcome)
    {
        var steps = Plan.Steps.Where(s => About(s, name) is { } clause && clause.HoldsAt(outcome)).Select(StepAndEnd).ToList();
        return steps.Count > 0 ? $"{Words.Step} {string.Join(", ", steps)}" : GoOn(name, outcome);
    }

    private string StepAndEnd(SheetStep step) =>
        step.Step.Value<EndingValue>(FactWord.End) is { } end ? $"{step.Code.Plain} ({Words.EndsHere.ToLowerInvariant()}: {DeclaredName.Spoken(end.Name.Value)})" : step.Code.Plain;

    private string GoOn(string name, string outcome)
    {
        var after = Plan.Steps.SkipWhile(s => s.Code != Step.Code).Skip(1);
        return after.FirstOrDefault(s => About(s, name) is not { } clause || clause.HoldsAt(outcome)) is { } next
            ? $"{Words.GoOnWithStep} {next.Code.Plain}"
            : Words.GoOn;
    }

    private static StateClause? About(SheetStep step, string name) => step.Guard?.All.OfType<StateClause>().FirstOrDefault(c => c.Thing.Value == name);

    /// <summary>Null when the step does not stop for it.</summary>
    private string? StopText(string name, string result)
    {
        var stop = Step.Step.All(FactWord.StopIf).Select(f => f.Value).OfType<ConditionValue>()
            .FirstOrDefault(c => c.Condition.All is [StateClause clause] && Step.Fills.In(clause.Thing.Value) == name && clause.HoldsAt(result));
        return stop is null ? null : Stop(stop.Otherwise?.Value);
    }

    private string Stop(string? then) => string.IsNullOrWhiteSpace(then) ? Words.Stop : $"{Words.Stop}: {then}";
}
