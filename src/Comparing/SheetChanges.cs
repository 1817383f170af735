using System.Collections.Frozen;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Proof;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Comparing;

/// <summary>Data sheets and tool lists as wholes: an interlock, an opening or a zone is nobody's item and guards everybody.</summary>
internal static class SheetChanges
{
    private static readonly FrozenSet<string> Guarding = FrozenSet.ToFrozenSet(["interlocks", "hazards", "openings", "zones", "conditions", "devices", "states", "places"]);

    /// <param name="only">Ids of procedures that are looked at: sheets that none of them stands on are left out.</param>
    public static IEnumerable<Change> Between(Library old, Library made, IReadOnlySet<string>? only)
    {
        var looked = made.Procedures.Concat(old.Procedures).Where(p => only is null || only.Contains(p.Id.Value)).ToList();
        var used = looked.SelectMany(p => p.UsesTools.Select(t => t.Value).Append(p.Machine?.Value ?? "")).ToHashSet(StringComparer.Ordinal);
        return Files(old).Keys.Union(Files(made).Keys).Where(id => only is null || used.Contains(id)).Order(StringComparer.Ordinal)
            .SelectMany(id => Between(id, Files(old).GetValueOrDefault(id), Files(made).GetValueOrDefault(id)));
    }

    /// <summary>What the machine forbids at a stop is hashed with every procedure: its stops were held against it.</summary>
    public static IEnumerable<Change> AtStops(Scope old, Scope made) =>
        old.Machine is { } before && made.Machine is { } after ? Items(after.Id.Value, "interlocks", Forbidden(before), Forbidden(after)) : [];

    private static DataMap Forbidden(Machine machine) =>
        new([.. SafeStops.RulesOf(machine).Select(r => new DataEntry(r.Id, r.Node))], machine.Node.At);

    private static Dictionary<string, DataNode> Files(Library library) =>
        library.Machines.Select(m => (m.Id.Value, m.Node)).Concat(library.ToolLists.Select(t => (t.Id.Value, t.Node))).DistinctBy(f => f.Value).ToDictionary(f => f.Value, f => f.Node, StringComparer.Ordinal);

    private static IEnumerable<Change> Between(string id, DataNode? old, DataNode? made)
    {
        if (old is null || made is null)
            return [new Change(ChangeClass.Hazard, id, "sheet", old is null ? null : "there", made is null ? null : "there") { Sense = made is null ? Sense.Looser : Sense.Other }];
        if (old is not DataMap before || made is not DataMap after || Meaning.Of(old) == Meaning.Of(made))
            return [];
        var keys = before.Entries.Concat(after.Entries).Select(e => e.Key.Value).Distinct(StringComparer.Ordinal).ToList();
        var groups = keys.Where(k => before.Find(k)?.Value is DataMap || after.Find(k)?.Value is DataMap).ToList();
        return
        [
            .. DataChanges.Between(id, old, made, [.. groups]),
            .. groups.SelectMany(g => Items(id, g, before.Find(g)?.Value as DataMap, after.Find(g)?.Value as DataMap)),
        ];
    }

    private static IEnumerable<Change> Items(string id, string group, DataMap? old, DataMap? made)
    {
        var names = (old?.Entries ?? []).Concat(made?.Entries ?? []).Select(e => e.Key.Value).Distinct(StringComparer.Ordinal);
        foreach (var name in names)
        {
            var (before, after) = (old?.Find(name)?.Value, made?.Find(name)?.Value);
            var where = $"{id}, {(group == "interlocks" ? $"interlock {name}" : name)}";
            if (before is null || after is null)
                yield return new Change(Guarding.Contains(group) ? ChangeClass.Hazard : ChangeClass.Method, where, "declared", DataChanges.Text(before), DataChanges.Text(after))
                {
                    Sense = Senses.Of(group, before, after, null), OldAt = before?.At, NewAt = after?.At,
                };
            else
                foreach (var change in DataChanges.Between(where, before, after, kind: group))
                    yield return change with { Hazards = group == "hazards" ? [name] : [] };
        }
    }
}
