using System.Collections.Immutable;
using Scriban.Runtime;

namespace Witnessmark.Rendering.Tags;

/// <summary>A tag on its leaf: <paramref name="Rows"/> of a leaf's three, over the whole width or half of it.</summary>
internal sealed record Cut(ScriptObject Model, bool Wide, int Rows = 1);

/// <summary>Lays tags on leaves that fit A4 and Letter alike: three rows, one wide tag or two narrow ones a row.</summary>
internal static class Leaves
{
    public const int RowsOfLeaf = 3;

    public static ImmutableArray<ImmutableArray<Cut>> Lay(IEnumerable<Cut> cuts)
    {
        var leaves = ImmutableArray.CreateBuilder<ImmutableArray<Cut>>();
        var leaf = ImmutableArray<Cut>.Empty;
        var free = RowsOfLeaf;
        foreach (var row in Rows([.. cuts]))
        {
            if (row[0].Rows > free)
            {
                leaves.Add(leaf);
                (leaf, free) = ([], RowsOfLeaf);
            }
            leaf = leaf.AddRange(row);
            free -= row[0].Rows;
        }
        return leaf.IsEmpty ? leaves.ToImmutable() : [.. leaves, leaf];
    }

    // wide ones first: a row that is half empty is at the end
    private static IEnumerable<ImmutableArray<Cut>> Rows(ImmutableArray<Cut> cuts) =>
        cuts.Where(c => c.Wide).Select(c => ImmutableArray.Create(c))
            .Concat(cuts.Where(c => !c.Wide).Chunk(2).Select(pair => pair.ToImmutableArray()));
}
