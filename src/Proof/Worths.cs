using System.Collections.Immutable;

namespace Witnessmark.Proof;

/// <summary>What a thing can be: one value, or of a thing that is counted so many pieces of this and so many of that.</summary>
/// <param name="Pieces">Of one value: that value, with no number.</param>
internal sealed record Worth(ImmutableArray<(string Value, int Count)> Pieces)
{
    public string? Whole => Pieces is [(var value, 0)] ? value : null;

    /// <summary><c>9 of 10 removed</c>; what nobody knows of the rest is left out.</summary>
    public override string ToString() => Whole ?? string.Join(", ", Pieces.Where(p => p.Value != Worths.Unknown).Select(p => $"{p.Count} of {Pieces.Sum(q => q.Count)} {p.Value}"));
}

/// <summary>All values that come up in one proof, each by a number.</summary>
internal sealed class Worths
{
    public const string Unknown = "?";

    private readonly List<Worth> _all = [];
    private readonly Dictionary<string, int> _numbers = new(StringComparer.Ordinal);

    public Worths() => Number(Unknown);

    public Worth this[int number] => _all[number];

    public int Number(string whole) => Number(new Worth([(whole, 0)]));

    /// <summary>A number of pieces become something; those that are further from it first.</summary>
    /// <param name="all">How many there are; null when nobody says, then a part of it counts as all.</param>
    public int Moved(int from, int count, int? all, string into)
    {
        if (all is not { } total || count >= total)
            return Number(into);
        List<(string Value, int Count)> pieces = _all[from].Whole is { } whole ? [(whole, total)] : [.. _all[from].Pieces.OrderBy(p => Nearness(p.Value, into))];
        var left = count;
        for (var i = 0; i < pieces.Count && left > 0; i++)
        {
            if (pieces[i].Value == into)
                continue;
            var taken = Math.Min(left, pieces[i].Count);
            pieces[i] = (pieces[i].Value, pieces[i].Count - taken);
            left -= taken;
        }
        pieces.Add((into, count - left));
        return Number(Sorted(pieces));
    }

    /// <summary>Which pieces a verb is done to first: a bolt that is snugged was fitted, not torqued.</summary>
    private static int Nearness(string from, string into)
    {
        ImmutableArray<string> order = into switch
        {
            "fitted" => ["removed"],
            "snug" => ["fitted", "loose"],
            "torqued" => ["snug", "fitted"],
            "loose" => ["torqued", "snug"],
            "removed" => ["loose", "snug", "fitted", "torqued"],
            _ => [],
        };
        return from == Unknown ? order.Length : order.IndexOf(from) is var place and >= 0 ? place : order.Length + 1;
    }

    /// <summary>Whether a value is the one that is asked for.</summary>
    public int Is(int number, ImmutableArray<string> wanted)
    {
        var worth = _all[number];
        if (worth.Whole == Unknown)
            return Ways.Unsure;
        if (wanted is [var one] && Counted(one) is (var count, var value))
            return worth.Whole is null && Of(worth, p => p == value) is var (sure, open, _) && sure <= count && count <= sure + open ? open == 0 ? Ways.Yes : Ways.Unsure : Ways.No;
        var told = Of(worth, wanted.Contains);
        return told.Sure == told.All ? Ways.Yes : told.Sure + told.Open == told.All ? Ways.Unsure : Ways.No;
    }

    /// <summary>The value that a text names: <c>all engaged</c> is engaged, <c>2 of 6 retracted</c> are pieces.</summary>
    public int Read(string text) => Counted(text) is var (count, value) && text.Split(' ') is [_, "of", var all, ..] && int.TryParse(all, out var total) && count < total
        ? Number(Sorted([(value, count), (Unknown, total - count)]))
        : Number(Counted(text)?.Value ?? text);

    private static (int Sure, int Open, int All) Of(Worth worth, Func<string, bool> wanted) => worth.Whole is { } whole
        ? (wanted(whole) ? 1 : 0, 0, 1)
        : (worth.Pieces.Where(p => wanted(p.Value)).Sum(p => p.Count), worth.Pieces.Where(p => p.Value == Unknown).Sum(p => p.Count), worth.Pieces.Sum(p => p.Count));

    private static (int Count, string Value)? Counted(string text) =>
        text.Split(' ', StringSplitOptions.RemoveEmptyEntries) is [var n, "of", _, var value] && int.TryParse(n, out var count) ? (count, value) : null;

    private static Worth Sorted(IEnumerable<(string Value, int Count)> pieces)
    {
        var merged = pieces.GroupBy(p => p.Value, StringComparer.Ordinal).Select(g => (g.Key, g.Sum(p => p.Count))).Where(p => p.Item2 > 0).OrderBy(p => p.Key, StringComparer.Ordinal).ToList();
        return merged is [var only] ? new Worth([(only.Key, 0)]) : new Worth([.. merged]);
    }

    private int Number(Worth worth)
    {
        var key = string.Join('|', worth.Pieces.Select(p => $"{p.Value}*{p.Count}"));
        if (_numbers.TryGetValue(key, out var known))
            return known;
        _all.Add(worth);
        return _numbers[key] = _all.Count - 1;
    }
}
