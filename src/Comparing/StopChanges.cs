using Witnessmark.Language.Model;
using Witnessmark.Proof;

namespace Witnessmark.Comparing;

/// <summary>Points at which people may leave the machine, in two versions.</summary>
internal static class StopChanges
{
    public static IEnumerable<Change> Between(Scope old, Scope made, StepMatches steps)
    {
        var (before, after) = (Safe(old), Safe(made));
        foreach (var match in steps.Matched)
        {
            var (was, now) = (before.Contains(match.Old.Step), after.Contains(match.New.Step));
            if (was != now)
                yield return new Change(ChangeClass.Hazard, StepChanges.Where(match.New), "safe stop after it", was ? "yes" : "no", now ? "yes" : "no")
                {
                    Sense = now ? Sense.Looser : Sense.Tighter, NewAt = match.New.Step.At, OldAt = match.Old.Step.At, Hazards = OrderChanges.Hazards(match.New),
                };
        }
    }

    private static HashSet<Step> Safe(Scope scope) =>
        new(scope.Procedure.Parts.SelectMany(p => SafeStops.Of(scope, p)).Where(p => p.IsSafe).Select(p => p.Place.Step), ReferenceEqualityComparer.Instance);
}
