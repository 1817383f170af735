using System.Collections.Immutable;
using Witnessmark.Language.Text;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Comparing;

/// <summary>Two states of a declared thing, key by key down to its values.</summary>
internal static class DataChanges
{
    /// <param name="where">The thing, for people.</param>
    /// <param name="without">Keys that are compared elsewhere.</param>
    /// <param name="kind">What it is declared under, where that tells more than its keys: zones, conditions.</param>
    public static IEnumerable<Change> Between(string where, DataNode old, DataNode made, ImmutableHashSet<string>? without = null, string kind = "") =>
        Between(where, kind, [], old, made, without ?? []).Where(c => c.Class != ChangeClass.None);

    private static IEnumerable<Change> Between(string where, string kind, ImmutableArray<string> path, DataNode old, DataNode made, ImmutableHashSet<string> without)
    {
        if (Meaning.Of(old) == Meaning.Of(made))
            return [];
        return (old, made) switch
        {
            (DataMap a, DataMap b) => Keys(a, b).Where(k => path.Length > 0 || !without.Contains(k))
                .SelectMany(k => (a.Find(k)?.Value, b.Find(k)?.Value) switch
                {
                    ({ } x, { } y) => Between(where, kind, path.Add(k), x, y, without),
                    var (x, y) => [Of(where, kind, path.Add(k), x, y)],
                }),
            (DataList a, DataList b) when a.Items.Length == b.Items.Length && a.Items.Concat(b.Items).Any(i => i is DataMap) =>
                a.Items.Zip(b.Items).SelectMany((pair, n) => Between(where, kind, path.Add($"{n + 1}"), pair.First, pair.Second, without)),
            _ => [Of(where, kind, path, old, made)],
        };
    }

    private static IEnumerable<string> Keys(DataMap old, DataMap made) =>
        old.Entries.Select(e => e.Key.Value).Concat(made.Entries.Select(e => e.Key.Value)).Distinct(StringComparer.Ordinal);

    private static Change Of(string where, string kind, ImmutableArray<string> path, DataNode? old, DataNode? made)
    {
        var (before, after) = (Text(old), Text(made));
        var key = What(kind, path) == Short(kind) ? kind : path.LastOrDefault(k => !char.IsDigit(k[0])) ?? kind;
        var top = path.FirstOrDefault() ?? "";
        var share = key is PropertyClass or Grade ? null : Values.Share(before, after) ?? (key == Zones ? Values.ShareInProse(before, after) : null);
        var sense = Values.Sense(before, after) is var own and not Sense.Other ? own : Senses.Of(key, old, made, share);
        var weight = Weight(top, key, before, after, out var because);
        return new Change(weight, where, What(kind, path), before, after) { Share = share, Sense = sense, Because = because, OldAt = old?.At, NewAt = made?.At };
    }

    private const string Zones = "zones";

    // a property class is a name with a stop in it, not a number
    private const string PropertyClass = "class";
    private const string Grade = "grade";

    private static string What(string kind, ImmutableArray<string> path) => path.IsEmpty ? Short(kind) : string.Join(' ', path);

    /// <summary>The key that an item has which is written in short: <c>brake-face: in front of the open side</c>.</summary>
    private static string Short(string kind) => kind switch
    {
        Zones => "text",
        "conditions" => "all",
        "states" => "values",
        _ => "declared",
    };

    private static ChangeClass Weight(string top, string key, string? old, string? made, out string? because)
    {
        because = null;
        var kind = (ChangeClass)Math.Min((int)FieldClasses.Of(top), (int)FieldClasses.Of(key));
        if (kind != ChangeClass.Wording)
            return kind;
        because = TellingWords.In(old ?? "", made ?? "");
        return because is null ? ChangeClass.Wording : ChangeClass.Hazard;
    }

    public static string? Text(DataNode? node) => node switch
    {
        null => null,
        DataText text => text.Text,
        DataList list => string.Join(", ", list.Items.Select(Text)),
        DataMap map => string.Join(", ", map.Entries.Select(e => $"{e.Key.Value}: {Text(e.Value)}")),
        _ => node.At.Text,
    };
}
