using System.Collections.Immutable;

namespace Witnessmark.Reading.References;

/// <summary>All names that can be used in one place, with what they stand for: the nearest layer first.</summary>
internal sealed class NameBook
{
    private readonly ImmutableArray<NameLayer> _layers;
    private readonly NameKind _kinds;

    public NameBook(ImmutableArray<NameLayer> layers)
    {
        _layers = [.. layers.Where(l => !l.All.IsEmpty)];
        _kinds = _layers.Aggregate(NameKind.None, (kinds, l) => kinds | l.Kinds);
    }

    public ImmutableArray<Declared> Find(string name)
    {
        ImmutableArray<Declared> found = [];
        foreach (var layer in _layers)
            if (layer.Find(name) is { IsEmpty: false } here)
                found = found.IsEmpty ? here : found.AddRange(here);
        return found;
    }

    public IEnumerable<Declared> Of(NameKind kinds) => _layers.SelectMany(l => l.All).Where(d => (d.Kind & kinds) != 0);

    public bool Knows(NameKind kinds) => (_kinds & kinds) != 0;
}
