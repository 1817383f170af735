using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Data;

/// <summary>Findings about names, keys and words.</summary>
public static class Names
{
    private static readonly System.Buffers.SearchValues<char> Signs = System.Buffers.SearchValues.Create(",=(){}[]:#|<>\"`");

    /// <summary>Whether conditions and steps can quote it; reports it when not.</summary>
    public static bool Usable(Located<string> name, FindingList findings)
    {
        var sign = name.Value.AsSpan().IndexOfAny(Signs);
        if (sign < 0 && name.Value.Length > 0)
            return true;
        findings.Add(
            DataFaults.NameUnusable,
            name.At,
            sign < 0 ? "A name is empty here." : $"The name `{Shown.Short(name.Value)}` has the sign `{name.Value[sign]}` in it.",
            "Steps and conditions call things by their names, and these signs mean something else there.",
            "Use letters, digits and hyphens: `wheel-nuts`.");
        return false;
    }

    public static Finding NotInList(Located<string> word, string whose, ImmutableArray<string> words) => new(
        DataFaults.ValueNotInList,
        word.At,
        $"{whose} is `{Shown.Short(word.Value)}`; it can be {Shown.Or(words)}.",
        "Rules and sheets know only these words; another one would be passed over.",
        NearMiss.Of(word.Value, words) is { } near ? $"Did you mean `{near}`?" : $"Write {Shown.Or(words)}.");

    internal static Finding Unknown(Located<string> key, string what, IEnumerable<string> known)
    {
        var all = known.ToImmutableArray();
        return new Finding(
            DataFaults.KeyUnknown,
            key.At,
            $"`{Shown.Short(key.Value)}` is not a key of {what}.",
            "A key that nobody knows is a fact that nobody reads: what stands behind it would never be checked or printed.",
            NearMiss.Of(key.Value, all) is { } near ? $"Did you mean `{near}`?"
                : all.Length == 0 ? "Take the line out."
                : $"What else can stand here: {string.Join(", ", all)}.");
    }

    internal static Finding Missing(string key, string what, DataMap map) => Missing(key, what, Beginning(map));

    internal static Location Beginning(DataMap map) => map.Entries is [var first, ..] ? first.Key.At : map.At;

    internal static Finding Missing(string key, string what, Location at) => new(
        DataFaults.KeyMissing,
        at,
        $"`{key}` is missing in {what}.",
        "Rules and sheets count on it; without it they would have to guess.",
        $"Add a line `{key}: …`.");
}
