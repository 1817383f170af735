namespace Witnessmark.Language.Quantities;

/// <summary>One end of a range. <paramref name="Inclusive"/>: the value itself belongs to it.</summary>
public readonly record struct Bound(Quantity Value, bool Inclusive);

/// <summary>
/// A range in words: <c>2.8 to 3.6 mm</c>, <c>below 4.60 mm</c>, <c>above x</c>, <c>from x</c>, <c>up to x</c>,
/// <c>x or less</c>, <c>3.10 to below 3.15 mm</c>, or a single value (both ends the same).
/// </summary>
public readonly record struct QuantityRange(Bound? Low, Bound? High)
{
    public Unit Unit => (Low ?? High)!.Value.Value.Unit;

    public static QuantityRange Between(Quantity low, Quantity high) => new(new Bound(low, true), new Bound(high, true));

    /// <summary>No value can lie in it: the ends are the wrong way round, or meet where one does not belong to it.</summary>
    public bool IsEmpty => Low is { } low && High is { } high
        && low.Value.CompareTo(high.Value) is var order && (order > 0 || (order == 0 && !(low.Inclusive && high.Inclusive)));

    public bool Contains(Quantity value)
    {
        if (Low is { } low && (value.CompareTo(low.Value) is var l) && (l < 0 || (l == 0 && !low.Inclusive)))
            return false;
        return High is not { } high || (value.CompareTo(high.Value) is var h && (h < 0 || (h == 0 && high.Inclusive)));
    }

    public override string ToString() => (Low, High) switch
    {
        ({ } l, { } h) when l.Inclusive && h.Inclusive && l.Value.CompareTo(h.Value) == 0 => $"{l.Value}",
        ({ } l, { } h) => $"{(l.Inclusive ? "" : "above ")}{LowText(l.Value, h.Value)} to {(h.Inclusive ? "" : "below ")}{h.Value}",
        ({ } l, null) => $"{(l.Inclusive ? "from" : "above")} {l.Value}",
        (null, { } h) => $"{(h.Inclusive ? "up to" : "below")} {h.Value}",
        _ => "any",
    };

    /// <summary>The unit stands once, unless the two ends were written in two.</summary>
    private static string LowText(Quantity low, Quantity high) => low.Unit == high.Unit ? low.NumberText : low.ToString();
}
