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
    public static ImmutableArray<int> For(int bolts)
    {
        if (bolts is < FewestBolts or > MostBolts)
            return [];
        var order = TurnsOn(bolts) ? Pairs(Mirrored(bolts / 2), bolts / 2) : Order(bolts);
        return [.. order.Select(b => b + 1)];
    }

    /// <summary>What is wrong with a written order for so many bolts, in the order met; empty when it may be used.</summary>
    public static ImmutableArray<SequenceFault> Problems(ImmutableArray<int> sequence, int bolts) => SequenceCheck.Of(sequence, bolts);

    private static IEnumerable<int> Order(int bolts) => bolts % 2 == 1 ? OddCircle.Order(bolts) : Pairs(Order(bolts / 2), bolts / 2);

    private static IEnumerable<int> Pairs(IEnumerable<int> first, int half) => first.SelectMany(b => new[] { b, b + half });

    /// <summary>
    /// 10, 14, 18 … bolts have two lists as good as each other, mirrored at bolt 1. Shops use 1 6 4 9 as well as 1 6 3 8; ours is
    /// the first. Six bolts have one only: its mirror puts two neighbours in a row.
    /// </summary>
    private static bool TurnsOn(int bolts) => bolts % 4 == 2 && bolts > 6;

    private static IEnumerable<int> Mirrored(int circle) => Order(circle).Select(b => (circle - b) % circle);
}
