using System.Collections;
using System.Collections.Frozen;
using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>Something declared once under a name of its own, in a data sheet, tool list, workshop file or procedure.</summary>
public interface IItem
{
    /// <summary>The name, where it is declared.</summary>
    Located<string> Id { get; }

    /// <summary>The item as it was written, for the hash and for messages.</summary>
    DataNode Node { get; }
}

/// <summary>The items of one kind, in the order written, found by name.</summary>
public sealed class Items<T> : IReadOnlyCollection<T>
    where T : class, IItem
{
    public static readonly Items<T> None = new([]);

    private readonly ImmutableArray<T> _all;
    private readonly FrozenDictionary<string, T> _byName;

    /// <summary>A name that is declared twice is a finding of the reader; here the first one counts.</summary>
    public Items(IEnumerable<T> items)
    {
        _all = [.. items.DistinctBy(i => i.Id.Value, StringComparer.Ordinal)];
        _byName = _all.ToFrozenDictionary(i => i.Id.Value, StringComparer.Ordinal);
    }

    public int Count => _all.Length;

    public T? Find(string name) => _byName.GetValueOrDefault(name);

    public IEnumerable<string> Names => _all.Select(i => i.Id.Value);

    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)_all).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
