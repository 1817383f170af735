using Witnessmark.Language.Model;

namespace Witnessmark.Records.Sheets;

/// <summary>Whether a step's <c>only-if</c> can be told before the work: only a group's thread condition can.</summary>
internal static class Guards
{
    private const string ConditionOf = "condition of ";

    public static Condition? Of(StepInPlace place) => (place.Effective(FactWord.OnlyIf)?.Value as ConditionValue)?.Condition;

    /// <returns>Null when it shows only on the machine.</returns>
    public static bool? Holds(StepInPlace place, StepNames names)
    {
        if (Of(place) is not { } guard)
            return true;
        var clauses = guard.All.Select(c => Holds(c, names)).ToList();
        return clauses.Contains(false) ? false : clauses.Contains(null) ? null : true;
    }

    private static bool? Holds(Clause clause, StepNames names)
    {
        if (clause is not StateClause state || !state.Thing.Value.StartsWith(ConditionOf, StringComparison.Ordinal))
            return null;
        if (names.Fasteners(state.Thing.Value[ConditionOf.Length..])?.Condition is not { } condition)
            return null;
        return state.Values.Any(v => v.Value == condition.Value) != state.Negated;
    }
}
