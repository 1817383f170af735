using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Sheets;

internal static class StopIfs
{
    /// <summary>The results of a reading, look, test or decision for which a step stops.</summary>
    public static ImmutableArray<string> Of(string name, IEnumerable<string> results, StepInPlace place, StepNames names)
    {
        var clauses = place.Step.All(FactWord.StopIf)
            .Select(f => f.Value).OfType<ConditionValue>()
            // a stop for two things together does not stop for one of them
            .Where(c => c.Condition.All.Length == 1)
            .Select(c => c.Condition.All[0]).OfType<StateClause>()
            .Where(s => names.Filled(s.Thing.Value) == name)
            .ToList();
        return [.. results.Where(r => clauses.Any(c => c.HoldsAt(r)))];
    }
}
