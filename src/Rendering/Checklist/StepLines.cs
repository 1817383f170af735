using System.Globalization;
using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist.Asks;

namespace Witnessmark.Rendering.Checklist;

/// <summary>The short lines of a step: a bold word and what follows it.</summary>
internal static class StepLines
{
    /// <summary>Read before the work: conditions, load, calls.</summary>
    public static IEnumerable<ScriptObject> Before(SheetStep step, SheetContext context)
    {
        var words = context.Words;
        var conditions = context.Conditions(step.Fills);
        if (step.Guard is { } only && !StepRow.SaidAtHeading(step))
            yield return Line(words.OnlyIf, conditions.Of(only));
        foreach (var needed in step.Step.All(FactWord.Requires).Select(f => f.Value).OfType<ConditionValue>())
            yield return Line(words.MustBeSo, conditions.Of(needed.Condition));
        if (step.Step.Find(FactWord.ForEach) is { } loop && loop.Value is not Loop { OfGroup: not null })
            yield return Line(words.ForEach, context.Loop(loop, step.Fills));
        // a section that is performed has no heading here: its steps say what they are done for
        else if (step.Within is not null && context.Rounds(step.Place.Section, step.Fills) is { } rounds)
            yield return Line(words.ForEach, rounds);
        foreach (var (key, text) in ItemLines.Of(step, context))
            yield return Line(key, text);
        foreach (var ask in step.Asks.OfType<LookAsk>().Where(a => a.Reading.LookFor is not null))
            yield return Line(words.LookFor, context.Tongue.Text(ask.Reading.LookFor!.Value.Value));
        if (step.Step.Value<Duration>(FactWord.Wait) is { } wait)
            yield return Line(words.Wait, context.Quantities.Text(wait.Range) + (wait.Until is { } until ? $" {words.Until} {context.Tongue.Text(until.Value)}" : ""));
        if (!step.Asks.OfType<StackAsk>().Any() && CallWords.Of(step, context) is { } call)
        {
            yield return Spoken(call, words);
        }
    }

    /// <summary>Read after a value is written: what to do when it is outside.</summary>
    public static IEnumerable<ScriptObject> After(SheetStep step, SheetContext context)
    {
        var words = context.Words;
        foreach (var outside in step.Asks.Select(a => Outside(a, context)).OfType<string>())
            yield return Line(words.Outside, outside);
        foreach (var stop in StopIfs(step, context))
            yield return Line(words.StopIf, stop);
        foreach (var outcome in step.Step.All(FactWord.Outcome).Select(f => f.Value).OfType<OutcomeValue>())
            yield return Line(context.Tongue.Name(outcome.Name.Value), When(outcome, step, context));
        if (step.Step.Value<EndingValue>(FactWord.End) is { } end)
            yield return Ending(end, step, context);
        if (step.Step.Value<AgainFrom>(FactWord.AgainFrom) is { } again)
            yield return Line(words.Again, string.Create(CultureInfo.InvariantCulture, $"{Number(again, step, context)}{context.Tongue.Name(again.Step.Value)}, {words.AtMost} {again.AtMost} {words.Times} {context.Tongue.Name(again.Then.Name.Value)} · {words.Ending(again.Then.Kind)}"));
        if (step.Step.Value<HandOverValue>(FactWord.HandOver) is { } over)
            yield return Line(words.HandOver, $"{string.Join(", ", over.From.Select(r => context.Tongue.Name(r.Value)))} {words.To} {string.Join(", ", over.To.Select(r => context.Tongue.Name(r.Value)))}");
    }

    /// <summary>Where the step stops, without the stops that the limits of its readings say.</summary>
    public static IEnumerable<string> StopIfs(SheetStep step, SheetContext context) =>
        step.Step.All(FactWord.StopIf).Select(f => f.Value).OfType<ConditionValue>().Where(s => !SaidOutside(s, step))
            .Select(stop => context.Conditions(step.Fills).Of(stop.Condition) + (stop.Otherwise is { } then ? $": {context.Tongue.Text(then.Value)}" : "."));

    private static string? Outside(Ask ask, SheetContext context) => ask switch
    {
        ReadingAsk { Reading.Outside: { } text } => context.Tongue.Text(text.Value),
        ReadingAsk { Accept: not null } => context.Words.Stop + ".",
        LookAsk { Reading.Outside: { } text } => context.Tongue.Text(text.Value),
        WorkedAsk { Value.Outside: { } text } => context.Tongue.Text(text.Value),
        WorkedAsk { Accept: not null } => context.Words.Stop + ".",
        _ => null,
    };

    // a stop for a reading that is taken here is said by its limits and its "outside" line
    private static bool SaidOutside(ConditionValue stop, SheetStep step) =>
        stop.Otherwise is null && stop.Condition.All is [StateClause { Thing.Value: var thing }]
        && step.Asks.Any(a => a.Key == step.Fills.In(thing) && a is ReadingAsk { Accept: not null } or WorkedAsk { Accept: not null });

    // what is done ends a performed part and no more
    private static ScriptObject Ending(EndingValue end, SheetStep step, SheetContext context)
    {
        var (words, name) = (context.Words, context.Tongue.Name(end.Name.Value));
        return step.Asks.OfType<ChoiceAsk>().Any(a => a.EndsPart)
            ? Line(words.PartEnds, string.Create(CultureInfo.InvariantCulture, $"{name} · {words.GoOnWith} {step.Code.Number + 1}"))
            : Line(words.EndsHere, $"{name} · {words.Ending(end.Kind)}");
    }

    // the number that stands on this sheet: a jump is found by it
    private static string Number(AgainFrom again, SheetStep step, SheetContext context) =>
        context.Plan.Steps.FirstOrDefault(s => s.Place.Procedure == step.Place.Procedure && s.Step.Slug == again.Step.Value) is { } to
            ? $"{context.Words.Step} {to.Code.Plain}, "
            : "";

    private static string When(OutcomeValue outcome, SheetStep step, SheetContext context) =>
        outcome.Otherwise ? context.Words.Otherwise : string.Join($" {context.Words.Or} ", outcome.When.Select(context.Conditions(step.Fills).WithLimits));

    private static string Blanks(string spoken) => spoken.Replace("___", "…", StringComparison.Ordinal);

    // a call and its answer are read as one
    private static ScriptObject Spoken(CallWords call, Words words) =>
        Line(words.Call, $"“{Blanks(call.Call)}”", call.Answer.Length > 0 ? words.Answer : "", $"“{Blanks(call.Answer)}”");

    private static ScriptObject Line(string key, string text, string back = "", string answer = "") =>
        new() { ["key"] = key, ["text"] = text, ["back"] = back, ["answer"] = answer };
}
