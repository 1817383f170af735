using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.Data;

/// <summary>The entries of one map: of two with one key the first stays.</summary>
internal sealed class Entries
{
    private const string Merge = "<<";
    private readonly Dictionary<string, Located<string>> _keys = new(StringComparer.Ordinal);

    public List<DataEntry> All { get; } = [];

    public void Keep(DataEntry entry, FindingList findings)
    {
        if (entry.Key.Value == Merge)
        {
            // what is fetched has its own finding
            if (!entry.Value.IsUnread())
                findings.Add(YamlSigns.Anchor(entry.Key.At));
        }
        else if (_keys.TryAdd(entry.Key.Value, entry.Key))
            All.Add(entry);
        else
            findings.Add(YamlSigns.KeyTwice(entry.Key, _keys[entry.Key.Value]));
    }
}
