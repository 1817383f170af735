using System.Collections.Immutable;
using Witnessmark.Language.Text;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Comparing;

/// <summary>Two states of a declared thing, key by key down to its values.</summary>
internal static class DataChanges
{
    /// <param name="where">The thing, for people.</param>
    /// <param name="without">Keys that are compared elsewhere.</param>
    public static IEnumerable<Change> Between(string where, DataNode old, DataNode made, ImmutableHashSet<string>? without = null) => Between(where, [], old, made, without ?? []);

    private static IEnumerable<Change> Between(string where, ImmutableArray<string> path, DataNode old, DataNode made, ImmutableHashSet<string> without)
    {
        if (Meaning.Of(old) == Meaning.Of(made))
            return [];
        return (old, made) switch
        {
            (DataMap a, DataMap b) => Keys(a, b).Where(k => path.Length > 0 || !without.Contains(k))
                .SelectMany(k => (a.Find(k)?.Value, b.Find(k)?.Value) switch
                {
                    ({ } x, { } y) => Between(where, path.Add(k), x, y, without),
                    var (x, y) => [Of(where, path.Add(k), x, y)],
                }),
            (DataList a, DataList b) when a.Items.Length == b.Items.Length && a.Items.Concat(b.Items).Any(i => i is DataMap) =>
                a.Items.Zip(b.Items).SelectMany((pair, n) => Between(where, path.Add($"{n + 1}"), pair.First, pair.Second, without)),
            _ => [Of(where, path, old, made)],
        };
    }

    private static IEnumerable<string> Keys(DataMap old, DataMap made) =>
        old.Entries.Select(e => e.Key.Value).Concat(made.Entries.Select(e => e.Key.Value)).Distinct(StringComparer.Ordinal);

    private static Change Of(string where, ImmutableArray<string> path, DataNode? old, DataNode? made)
    {
        var (before, after) = (Text(old), Text(made));
        var key = path.LastOrDefault(k => !char.IsDigit(k[0])) ?? "";
        var top = path.FirstOrDefault() ?? "";
        var share = Values.Share(before, after);
        var sense = Values.Sense(before, after) is var own and not Sense.Other ? own : FieldClasses.Of(key, share);
        var kind = Class(top, key, before, after, out var because);
        return new Change(kind, where, string.Join(' ', path), before, after) { Share = share, Sense = sense, Because = because, OldAt = old?.At, NewAt = made?.At };
    }

    private static ChangeClass Class(string top, string key, string? old, string? made, out string? because)
    {
        because = null;
        var kind = (ChangeClass)Math.Min((int)FieldClasses.Of(top), (int)FieldClasses.Of(key));
        if (kind != ChangeClass.Wording)
            return kind;
        because = TellingWords.In(old ?? "", made ?? "");
        return because is null ? ChangeClass.Wording : ChangeClass.Hazard;
    }

    private static string? Text(DataNode? node) => node switch
    {
        null => null,
        DataText text => text.Text,
        DataList list => string.Join(", ", list.Items.Select(Text)),
        DataMap map => string.Join(", ", map.Entries.Select(e => $"{e.Key.Value}: {Text(e.Value)}")),
        _ => node.At.Text,
    };
}
