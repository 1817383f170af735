using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Proof;

namespace Witnessmark.Comparing;

/// <summary>Points at which people may leave the machine, in two versions.</summary>
internal static class StopChanges
{
    public static IEnumerable<Change> Between(Scope old, Scope made, StepMatches steps)
    {
        var (before, after) = (Safe(old), Safe(made));
        return steps.Matched.Where(m => before.Contains(m.Old.Step) != after.Contains(m.New.Step)).GroupBy(m => after.Contains(m.New.Step)).Select(g => Of([.. g], g.Key));
    }

    /// <summary>One change for all steps: what makes a machine safe to leave is seldom of one step.</summary>
    private static Change Of(ImmutableArray<StepMatch> steps, bool safe)
    {
        var where = steps is [var one] ? StepChanges.Where(one.New) : $"steps {string.Join(", ", steps.Select(m => m.New.Step.Number))}";
        return new Change(ChangeClass.Hazard, where, steps.Length == 1 ? "safe stop after it" : "safe stop after them", safe ? "no" : "yes", safe ? "yes" : "no")
        {
            Sense = safe ? Sense.Looser : Sense.Tighter,
            NewAt = steps[0].New.Step.At,
            OldAt = steps[0].Old.Step.At,
            Hazards = [.. steps.SelectMany(m => OrderChanges.Hazards(m.New)).Distinct(StringComparer.Ordinal)],
        };
    }

    private static HashSet<Step> Safe(Scope scope) =>
        new(scope.Procedure.Parts.SelectMany(p => SafeStops.Of(scope, p)).Where(p => p.IsSafe).Select(p => p.Place.Step), ReferenceEqualityComparer.Instance);
}
