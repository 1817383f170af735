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
                yield return change with { Where = $"{id}, {change.Where}", Through = id };
        }
    }

    /// <summary>Another version of a common part is as much as has changed in that part, where both states have what they ask for.</summary>
    public static Change Pinned(Change change, Scope old, Scope made)
    {
        var id = change.What.Split(' ')[^1];
        if (old.Library.Procedure(id) is not { } before || made.Library.Procedure(id) is not { } after || before.Version?.Value != change.Old || after.Version?.Value != change.New)
            return change with { Because = "what is asked for is not here in both states: nobody can say what changes with it" };
        var part = Comparer.Between(old.Library, before, made.Library, after, [old.Procedure.Id.Value]).Class;
        return change with { Class = part > ChangeClass.Wording ? part : ChangeClass.Wording };
    }

    private static IEnumerable<string> Performed(Procedure procedure) =>
        procedure.Steps.SelectMany(s => s.All(FactWord.Perform)).Select(f => f.Value).OfType<PerformValue>().Select(p => p.Procedure.Value).Where(p => p != "this").Distinct(StringComparer.Ordinal);
}
