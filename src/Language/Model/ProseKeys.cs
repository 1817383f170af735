using System.Collections.Frozen;

namespace Witnessmark.Language.Model;

/// <summary>Keys of data whose text is read by people: no names are looked up in it and nothing in it is read as a number.</summary>
public static class ProseKeys
{
    private static readonly FrozenSet<string> All = FrozenSet.Create(
        StringComparer.Ordinal,
        "title", "basis", "what", "wording", "look-for", "outside", "because", "controls", "call", "answer", "met-by", "notice", "help", "reason", "why");

    public static bool Has(string key) => All.Contains(key);
}
