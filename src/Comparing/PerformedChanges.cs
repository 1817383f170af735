using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Comparing;

/// <summary>Common parts that a procedure performs, in two states: what changed in them has changed on its sheet.</summary>
internal static class PerformedChanges
{
    public static IEnumerable<Change> Between(Scope old, Scope made, ImmutableHashSet<string> within)
    {
        foreach (var id in Performed(made.Procedure).Intersect(Performed(old.Procedure), StringComparer.Ordinal))
        {
            if (old.Library.Procedure(id) is not { } before || made.Library.Procedure(id) is not { } after || within.Contains(id))
                continue;
            foreach (var change in Comparer.Between(old.Library, before, made.Library, after, within).Changes)
                yield return change with { Where = $"{id}, {change.Where}" };
        }
    }

    private static IEnumerable<string> Performed(Procedure procedure) =>
        procedure.Steps.SelectMany(s => s.All(FactWord.Perform)).Select(f => f.Value).OfType<PerformValue>().Select(p => p.Procedure.Value).Where(p => p != "this").Distinct(StringComparer.Ordinal);
}
