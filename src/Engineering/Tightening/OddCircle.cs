namespace Witnessmark.Engineering.Tightening;

/// <summary>
/// The order for an odd circle, where no bolt has an opposite: the next bolt is in the middle of a widest gap; of several, the one
/// farthest from the bolt tightened last, then from the one before it, and so on; of equals the lower number. It gives the
/// star of five, 1 3 5 2 4, and 1 2 3 for three.
/// </summary>
internal static class OddCircle
{
    public static List<int> Order(int bolts)
    {
        var order = new List<int> { 0 };
        while (order.Count < bolts)
            order.Add(Next(order, bolts));
        return order;
    }

    private static int Next(List<int> order, int bolts)
    {
        var candidates = Middles(order, bolts);
        for (var back = order.Count - 1; back >= 0 && candidates.Count > 1; back--)
        {
            var farthest = candidates.Max(c => Apart(c, order[back], bolts));
            candidates = candidates.FindAll(c => Apart(c, order[back], bolts) == farthest);
        }
        return candidates.Min();
    }

    /// <summary>The bolts in the middle of the widest gaps; a gap with an even number of bolts has two middles.</summary>
    private static List<int> Middles(List<int> order, int bolts)
    {
        var tight = order.Order().ToList();
        var gaps = tight.Zip(tight.Skip(1).Append(bolts)).ToList();
        var widest = gaps.Max(g => g.Second - g.First);
        return
        [
            .. gaps.Where(g => g.Second - g.First == widest)
                .SelectMany(g => new[] { (g.First + g.Second) / 2, (g.First + g.Second + 1) / 2 })
                .Distinct(),
        ];
    }

    private static int Apart(int a, int b, int bolts) => Math.Min(Math.Abs(a - b), bolts - Math.Abs(a - b));
}
