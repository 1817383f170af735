using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Sheets;

/// <summary>
/// The steps of a common part behind the step that performs it, numbered 16.1, 16.2 … A step that the given parameters
/// rule out (oil on a dry thread) is left out; the others keep their numbers, so that paper and common part agree.
/// </summary>
internal static class PerformedSteps
{
    /// <param name="guard">Of the step that performs: what it performs is under it.</param>
    /// <param name="turns">Of the loop around the step: what it performs is done in each turn.</param>
    public static ImmutableArray<PlannedStep> Of(StepInPlace place, StepNames names, Condition? guard, LoopTurns? turns)
    {
        var steps = new List<PlannedStep>();
        var inner = 0;
        Perform(place, names, new Around([names.Own.Procedure.Id.Value], guard is null ? [] : [guard], turns), place.Step.Number, ref inner, steps);
        return [.. steps];
    }

    /// <param name="Procedures">Being performed: one that performs itself is a fault elsewhere and ends here.</param>
    private sealed record Around(ImmutableHashSet<string> Procedures, ImmutableArray<Condition> Guards, LoopTurns? Turns)
    {
        public Around Into(Procedure callee, Condition? guard, LoopTurns? turns) =>
            new(Procedures.Add(callee.Id.Value), guard is null ? Guards : Guards.Add(guard), turns);
    }

    private static void Perform(StepInPlace place, StepNames names, Around around, int number, ref int inner, List<PlannedStep> steps)
    {
        foreach (var perform in place.Step.All(FactWord.Perform).Select(f => f.Value).OfType<PerformValue>())
        {
            if (names.Callee(perform) is not { } callee)
                continue;
            var (there, performing) = (names.Into(callee, perform), new Performing());
            foreach (var step in Walk(callee, perform))
            {
                inner++;
                var holds = Guards.Holds(step, there);
                if (holds is false)
                    continue;
                var guard = holds is true ? null : Guards.Of(step);
                var turns = LoopTurns.Of(step, there) ?? around.Turns;
                var sheet = new SheetStep(new StepCode(number, inner), step, there.Shown, [.. AskList.Of(step, there, turns).Select(a => Ended(a, step))], []) { Guard = guard, Under = around.Guards, Turns = turns, Within = performing };
                steps.Add(new PlannedStep(sheet, there, []));
                if (!around.Procedures.Contains(callee.Id.Value))
                    Perform(step, there, around.Into(callee, guard, turns), number, ref inner, steps);
            }
        }
    }

    /// <summary>What is done ends here, and the work goes on behind it; any other ending ends whoever performs it too.</summary>
    private static Ask Ended(Ask ask, StepInPlace step) =>
        ask is ChoiceAsk { Ends: true } end && step.Step.Value<EndingValue>(FactWord.End)?.Kind == EndingKind.Done ? end with { EndsPart = true } : ask;

    private static IEnumerable<StepInPlace> Walk(Procedure callee, PerformValue perform) =>
        perform.Part is { } name
            ? callee.Part(name.Value)?.Walk(callee) ?? []
            : callee.Walk();
}
