using System.Collections.Immutable;
using Witnessmark.Engineering;
using Witnessmark.Language.Model;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Comparing;

/// <summary>Declared things that a procedure reaches, from data sheet, tool list, workshop file and its own front matter, in two states.</summary>
internal static class ItemChanges
{
    public static IEnumerable<Change> Between(Scope old, Scope made)
    {
        var (before, after) = (Reached.From(old), Reached.From(made));
        foreach (var name in before.Keys.Union(after.Keys).Order(StringComparer.Ordinal))
        {
            var (from, to) = (before.GetValueOrDefault(name), after.GetValueOrDefault(name));
            var where = Where(name, to is null ? old : made);
            if (from is null || to is null)
                yield return new Change(ChangeClass.Method, where, "used", from is null ? null : "yes", to is null ? null : "yes") { OldAt = from?.Id.At, NewAt = to?.Id.At };
            else
                foreach (var change in DataChanges.Between(where, from.Node, to.Node, kind: $"{name[..name.IndexOf('/', StringComparison.Ordinal)]}s"))
                    yield return Worked(InUse.Of(change with { Hazards = Touched(to, made) }, to, old, made), from, to, old, made);
        }
    }

    /// <summary>The hazards that are told at the steps which rest on it.</summary>
    private static ImmutableArray<string> Touched(IItem item, Scope scope) =>
        [.. Reached.StepsOn(item.Id.Value, scope).SelectMany(s => OrderChanges.Hazards(s)).Distinct(StringComparer.Ordinal)];

    /// <summary><c>okr-34, backing-ring-bolts</c></summary>
    private static string Where(string name, Scope scope)
    {
        var (kind, id) = (name[..name.IndexOf('/', StringComparison.Ordinal)], name[(name.IndexOf('/', StringComparison.Ordinal) + 1)..]);
        var home = kind switch
        {
            "tool" => scope.ToolLists.FirstOrDefault(t => t.Find(id) is not null)?.Id.Value,
            "call" => "calls",
            _ => scope.Machine?.Id.Value,
        };
        return home is null ? id : $"{home}, {id}";
    }

    /// <summary>The arithmetic of a bolt group or a stack, where the change makes it come out otherwise.</summary>
    private static Change Worked(Change change, IItem from, IItem to, Scope old, Scope made)
    {
        if (change.Class != ChangeClass.Hazard)
            return change;
        var (before, after) = (Lines(from, old), Lines(to, made));
        var worked = before.Keys.Union(after.Keys).Select(k => (k, before.GetValueOrDefault(k), after.GetValueOrDefault(k))).Where(l => l.Item2 != l.Item3);
        return change with { Worked = [.. worked] };
    }

    private static Dictionary<string, string> Lines(IItem item, Scope scope)
    {
        var worked = new WorkedLines(scope.Library.Workshop);
        var lines = item switch
        {
            FastenerGroup group => worked.Of(group),
            PartStack stack when scope.Machine is { } machine => worked.Of(stack, machine),
            PartKind part when scope.Machine is { } machine => machine.Stacks.Where(s => s.Node.At.Text.Contains(part.Id.Value, StringComparison.Ordinal)).SelectMany(s => worked.Of(s, machine)),
            _ => [],
        };
        return lines.DistinctBy(l => l.Label).ToDictionary(l => l.Label, l => l.Line, StringComparer.Ordinal);
    }
}
