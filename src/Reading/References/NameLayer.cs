using System.Collections.Immutable;

namespace Witnessmark.Reading.References;

/// <summary>Names that belong together - a machine's, a procedure's own - sorted once and shared by all books that hold them.</summary>
internal sealed class NameLayer
{
    private readonly Dictionary<string, ImmutableArray<Declared>> _byName;

    public NameLayer(IEnumerable<Declared> all)
    {
        All = [.. all];
        Kinds = All.Aggregate(NameKind.None, (kinds, d) => kinds | d.Kind);
        _byName = All.GroupBy(d => d.Name, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.ToImmutableArray(), StringComparer.Ordinal);
    }

    /// <summary>In the order declared.</summary>
    public ImmutableArray<Declared> All { get; }

    public NameKind Kinds { get; }

    public ImmutableArray<Declared> Find(string name) => _byName.GetValueOrDefault(name, []);
}
