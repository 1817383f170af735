using System.Collections.Immutable;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Records.Hashing;

/// <summary>A declared item: keys sorted, lists in order, quantities in standard spelling, everything else as text.</summary>
internal static class NodeCanon
{
    public static Canon Of(DataNode node, ImmutableHashSet<string>? without = null) => node switch
    {
        DataMap map => Canon.Map(map.Entries
            .Where(e => without is null || !without.Contains(e.Key.Value))
            .Select(e => (e.Key.Value, (Canon?)Of(e.Value)))),
        DataList list => Canon.List(list.Items.Select(i => Of(i))),
        DataText text => Scalar(text.Text),
        _ => throw new NotSupportedException($"data of shape {node.GetType().Name} has no canonical form yet"),
    };

    private static Canon Scalar(string text)
    {
        if (QuantityReader.Toleranced(text) is { Ok: true } toleranced)
            return toleranced.Value is { Tolerance: null, Beside: null } plain ? QuantityCanon.Of(plain.Target) : QuantityCanon.Of(toleranced.Value);
        return QuantityReader.Range(text) is { Ok: true } range ? QuantityCanon.Of(range.Value) : Canon.Text(text);
    }
}
