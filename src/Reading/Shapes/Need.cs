using System.Collections.Immutable;

namespace Witnessmark.Reading.Shapes;

/// <summary>What must be there besides the keys that are always needed.</summary>
internal abstract record Need;

/// <summary>Keys that belong together: the first set of which one is there must be whole; where none is there, the last.</summary>
internal sealed record FirstBegun(params ImmutableArray<ImmutableArray<string>> Sets) : Need
{
    public ImmutableArray<string> Of(Func<string, bool> has)
    {
        foreach (var set in Sets)
            if (set.Any(has))
                return set;
        return Sets[^1];
    }
}

/// <summary>A key that is needed unless another has a certain value.</summary>
internal sealed record Unless(string Key, string Other, string Value) : Need;

/// <summary>Forms of which exactly one is meant, and that one whole. The first key of a form shows that it is meant.</summary>
internal sealed record OneWhole(params ImmutableArray<ImmutableArray<string>> Sets) : Need
{
    public IEnumerable<string> Heads => Sets.Select(s => s[0]).Distinct(StringComparer.Ordinal);

    public int Meant(Func<string, bool> has) => Heads.Count(has);

    public bool Met(Func<string, bool> has) => Meant(has) == 1 && Sets.Any(s => s.All(has));
}
