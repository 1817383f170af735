using System.Collections.Immutable;

namespace Witnessmark.Language.Text;

/// <summary>A value of a data file as it was written: every scalar is text, nothing is guessed.</summary>
public abstract record DataNode(Location At);

/// <summary>A scalar. <paramref name="Text"/> is the value without quotes and comment.</summary>
public sealed record DataText(string Text, Location At) : DataNode(At);

public sealed record DataList(ImmutableArray<DataNode> Items, Location At) : DataNode(At);

public sealed record DataMap(ImmutableArray<DataEntry> Entries, Location At) : DataNode(At)
{
    public DataEntry? Find(string key)
    {
        foreach (var entry in Entries)
            if (entry.Key.Value == key)
                return entry;
        return null;
    }
}

public sealed record DataEntry(Located<string> Key, DataNode Value);
