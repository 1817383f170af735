using Witnessmark.Language.Model;

namespace Witnessmark.Records.Sheets;

/// <summary>Whether a step's <c>only-if</c> can be told before the work: only a group's thread condition can.</summary>
internal static class Guards
{
    private const string ConditionOf = "condition of ";

    public static Condition? Of(StepInPlace place) => (place.Effective(FactWord.OnlyIf)?.Value as ConditionValue)?.Condition;

    /// <returns>Null when it shows only on the machine.</returns>
    public static bool? Holds(StepInPlace place, StepNames names) =>
        Of(place) is { } guard ? guard.Holds(c => Holds(c, names)) : true;

    private static bool? Holds(Clause clause, StepNames names)
    {
        if (clause is not StateClause state || !state.Thing.Value.StartsWith(ConditionOf, StringComparison.Ordinal))
            return null;
        if (names.Fasteners(state.Thing.Value[ConditionOf.Length..])?.Condition is not { } condition)
            return null;
        return state.HoldsAt(condition.Value);
    }
}
