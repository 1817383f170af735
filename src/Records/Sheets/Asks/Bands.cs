using Witnessmark.Language.Quantities;

namespace Witnessmark.Records.Sheets;

/// <summary>Ranges that follow each other, joined to one.</summary>
internal static class Bands
{
    /// <returns>Null when there is none, when a gap lies between two, or when they cover everything.</returns>
    public static QuantityRange? Joined(IEnumerable<QuantityRange> ranges)
    {
        var ordered = ranges.Order(Comparer<QuantityRange>.Create(ByLow)).ToList();
        if (ordered.Count == 0)
            return null;
        var joined = ordered[0];
        foreach (var next in ordered.Skip(1))
        {
            if (!Touch(joined.High, next.Low))
                return null;
            joined = joined with { High = Upper(joined.High, next.High) };
        }
        return joined is { Low: null, High: null } ? null : joined;
    }

    private static int ByLow(QuantityRange a, QuantityRange b) => (a.Low, b.Low) switch
    {
        (null, null) => 0,
        (null, _) => -1,
        (_, null) => 1,
        ({ } x, { } y) => x.Value.CompareTo(y.Value),
    };

    private static bool Touch(Bound? high, Bound? low)
    {
        if (high is not { } h || low is not { } l)
            return true;
        var order = h.Value.CompareTo(l.Value);
        return order > 0 || (order == 0 && (h.Inclusive || l.Inclusive));
    }

    private static Bound? Upper(Bound? a, Bound? b)
    {
        if (a is not { } x || b is not { } y)
            return null;
        var order = x.Value.CompareTo(y.Value);
        return order > 0 || (order == 0 && x.Inclusive) ? x : y;
    }
}
