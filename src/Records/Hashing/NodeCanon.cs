using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Records.Hashing;

/// <summary>A declared item: keys sorted, lists in order, quantities in standard spelling, everything else (and all that people read as words) as text.</summary>
internal static class NodeCanon
{
    public static Canon Of(DataNode node, ImmutableHashSet<string>? without = null) => node switch
    {
        DataMap map => Canon.Map(map.Entries
            .Where(e => without is null || !without.Contains(e.Key.Value))
            .Select(e => (e.Key.Value, (Canon?)(ProseKeys.Has(e.Key.Value) ? Words(e.Value) : Of(e.Value))))),
        DataList list => Canon.List(list.Items.Select(i => Of(i))),
        DataText text => Scalar(text.Text),
        _ => throw new NotSupportedException($"data of shape {node.GetType().Name} has no canonical form yet"),
    };

    /// <summary>Printed as it is written: <c>10 minutes</c> is another text than <c>10 min</c>.</summary>
    private static Canon Words(DataNode node) => node switch
    {
        DataText text => Canon.Text(text.Text),
        DataList list => Canon.List(list.Items.Select(Words)),
        _ => Of(node),
    };

    private static Canon Scalar(string text)
    {
        if (QuantityReader.Toleranced(text) is { Ok: true } toleranced)
            return toleranced.Value is { Tolerance: null, Beside: null } plain ? QuantityCanon.Of(plain.Target) : QuantityCanon.Of(toleranced.Value);
        return QuantityReader.Range(text) is { Ok: true } range ? QuantityCanon.Of(range.Value) : Canon.Text(text);
    }
}
