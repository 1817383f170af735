using System.Collections.Immutable;
using System.Globalization;

namespace Witnessmark.Engineering.Searching;

/// <summary>One place where a fault may be.</summary>
/// <param name="Chance">That it is there, 0 to 1.</param>
/// <param name="Minutes">That looking there takes; above 0.</param>
public sealed record SearchPlace(string Name, decimal Chance, decimal Minutes);

/// <summary>
/// In which order places are looked at, one after the other until the fault is found. The cheapest order goes by chance for each
/// minute, greatest first (the ratio rule of W. E. Smith, 1956; from memory). Where the chances make up the whole, the last place is
/// implied: in none of the others it can only be there, so that its own minutes are not spent.
/// </summary>
public static class SearchOrder
{
    /// <summary>More than any machine has, and few enough to try each as the last.</summary>
    public const int MostPlaces = 50;

    /// <summary>Minutes on average until it is known where the fault is, or that it is in none of them: <c>0.35 × 20 + 0.25 × 40 + … = 49.75</c>.</summary>
    public static Worked<decimal> Expected(ImmutableArray<SearchPlace> order)
    {
        var terms = new List<string>();
        var (spent, expected) = (0m, 0m);
        var nowhere = 1 - order.Sum(p => p.Chance);
        for (var i = 0; i < order.Length; i++)
        {
            spent += i == order.Length - 1 && nowhere <= 0 ? 0 : order[i].Minutes;
            expected += order[i].Chance * spent;
            terms.Add(Term(order[i].Chance, spent));
        }
        if (nowhere > 0)
        {
            expected += nowhere * spent;
            terms.Add(Term(nowhere, spent));
        }
        return new(expected, string.Create(CultureInfo.InvariantCulture, $"{string.Join(" + ", terms)} = {Plain(expected)} min"));
    }

    /// <summary>The order that takes the fewest minutes on average; of places that are as good, as given.</summary>
    public static ImmutableArray<SearchPlace> Cheapest(ImmutableArray<SearchPlace> places) =>
        places.Length is 0 or > MostPlaces
            ? places
            : Enumerable.Range(0, places.Length).Reverse().Select(last => WithLast(places, last)).MinBy(o => Expected(o).Value);

    private static ImmutableArray<SearchPlace> WithLast(ImmutableArray<SearchPlace> places, int last) =>
        [.. places.RemoveAt(last).OrderByDescending(p => p.Chance / p.Minutes), places[last]];

    private static string Term(decimal chance, decimal minutes) => $"{Plain(chance)} × {Plain(minutes)}";

    private static string Plain(decimal number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
