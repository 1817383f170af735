using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Sheets;

/// <summary>
/// The steps of a common part behind the step that performs it, numbered 16.1, 16.2 … A step that the given parameters
/// rule out (oil on a dry thread) is left out; the others keep their numbers, so that paper and common part agree.
/// </summary>
internal static class PerformedSteps
{
    public static ImmutableArray<PlannedStep> Of(StepInPlace place, StepNames names)
    {
        var steps = new List<PlannedStep>();
        var inner = 0;
        Perform(place, names, [names.Own.Procedure.Id.Value], place.Step.Number, ref inner, steps);
        return [.. steps];
    }

    /// <param name="within">Procedures being performed: one that performs itself is a fault elsewhere and ends here.</param>
    private static void Perform(
        StepInPlace place, StepNames names, ImmutableHashSet<string> within, int number, ref int inner, List<PlannedStep> steps)
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
                var sheet = new SheetStep(new StepCode(number, inner), step, there.Shown, AskList.Of(step, there), []) { Guard = holds is true ? null : Guards.Of(step), Within = performing };
                steps.Add(new PlannedStep(sheet, there, []));
                if (!within.Contains(callee.Id.Value))
                    Perform(step, there, within.Add(callee.Id.Value), number, ref inner, steps);
            }
        }
    }

    private static IEnumerable<StepInPlace> Walk(Procedure callee, PerformValue perform) =>
        perform.Part is { } name
            ? callee.Part(name.Value)?.Walk(callee) ?? []
            : callee.Walk();
}
