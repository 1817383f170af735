using System.Collections.Immutable;

namespace Witnessmark.Engineering.Tightening;

/// <summary>
/// The order in which a circle of bolts is tightened so that the joint closes level: bolts numbered clockwise from 1, in
/// opposite pairs, each new pair in the middle of the widest gap. Halving says it all: the order of 2n bolts is the order of n
/// bolts, each followed by its opposite. What is left after halving is an odd circle, which <see cref="OddCircle"/> fills.
/// </summary>
public static class StarSequence
{
    public const int FewestBolts = 3;
    public const int MostBolts = 96;

    /// <summary>Every bolt once. Empty for a count below 3 or above 96.</summary>
    public static ImmutableArray<int> For(int bolts) =>
        bolts is < FewestBolts or > MostBolts ? [] : [.. Order(bolts).Select(b => b + 1)];

    /// <summary>What is wrong with a written order for so many bolts, in the order met; empty when it may be used.</summary>
    public static ImmutableArray<SequenceFault> Problems(ImmutableArray<int> sequence, int bolts) => SequenceCheck.Of(sequence, bolts);

    private static IEnumerable<int> Order(int bolts)
    {
        if (bolts % 2 == 1)
            return OddCircle.Order(bolts);
        var half = bolts / 2;
        var first = Order(half);
        // Of two lists that mirror each other, 10, 14, 18 … bolts use the one that turns on from the first bolt: 1 6 4 9, not
        // 1 6 3 8. Six bolts cannot: it would put two neighbours in a row.
        if (half % 2 == 1 && half > 3)
            first = first.Select(b => (half - b) % half);
        return first.SelectMany(b => new[] { b, b + half });
    }
}
