using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Records.Hashing;

/// <summary>
/// The declared items that a procedure uses: named by a fact or a message, or by an item that is used. Two items of one
/// name (a part and the load it makes) are both in.
/// </summary>
public static class Reached
{
    /// <returns>Lines <c>part/friction-disc</c> with the item, by name.</returns>
    public static ImmutableSortedDictionary<string, IItem> From(Scope scope)
    {
        var found = ImmutableSortedDictionary.CreateBuilder<string, IItem>(StringComparer.Ordinal);
        var open = new Queue<string>(FactNames.Of(scope.Procedure));
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (open.TryDequeue(out var name))
        {
            if (!seen.Add(name))
                continue;
            foreach (var (kind, item) in Named(scope, name))
                if (found.TryAdd($"{kind}/{item.Id.Value}", item) && kind != "zone")
                    foreach (var next in Names(item.Node))
                        open.Enqueue(next);
        }
        return found.ToImmutable();
    }

    /// <summary>The steps that rest on an item: they name it, or something that names it.</summary>
    public static IEnumerable<StepInPlace> StepsOn(string id, Scope scope)
    {
        var namers = From(scope).Values.SelectMany(i => Names(i.Node).Select(name => (name, By: i.Id.Value))).ToLookup(n => n.name, n => n.By, StringComparer.Ordinal);
        var through = new HashSet<string>(StringComparer.Ordinal);
        var open = new Queue<string>([id]);
        while (open.TryDequeue(out var name))
            if (through.Add(name))
                foreach (var namer in namers[name])
                    open.Enqueue(namer);
        return scope.Procedure.Walk().Where(s => FactNames.Of(s).Any(through.Contains));
    }

    private static IEnumerable<(string Kind, IItem Item)> Named(Scope scope, string name)
    {
        (string Kind, IItem? Item)[] all =
        [
            ("fasteners", scope.Fasteners(name)),
            ("part", scope.Part(name)),
            ("stack", scope.Stack(name)),
            ("shims", scope.Shims(name)),
            ("reading", scope.Reading(name)),
            ("value", scope.Value(name)),
            ("test", scope.Test(name)),
            ("hazard", scope.Hazard(name)),
            ("load", scope.Load(name)),
            ("space", scope.Space(name)),
            ("device", scope.Device(name)),
            ("call", scope.Call(name)),
            ("tool", scope.Tool(name)),
            ("zone", scope.Machine?.Zones.Find(name)),
            ("state", scope.Machine?.States.Find(name)),
            ("condition", scope.Machine?.Conditions.Find(name)),
        ];
        return all.Where(a => a.Item is not null).Select(a => (a.Kind, a.Item!));
    }

    private static IEnumerable<string> Names(DataNode node) => node switch
    {
        DataMap map => map.Entries.Where(e => !ProseKeys.Has(e.Key.Value)).SelectMany(e => Names(e.Value)),
        DataList list => list.Items.SelectMany(Names),
        DataText text => FactNames.In(text.Text),
        _ => [],
    };
}
