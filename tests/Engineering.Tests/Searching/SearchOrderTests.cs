using System.Collections.Immutable;
using CsCheck;
using Witnessmark.Engineering.Searching;

namespace Witnessmark.Engineering.Tests.Searching;

public class SearchOrderTests
{
    /// <summary>The wheel ends of the hauler; minutes and chances are the domain's (4.15), as are the two averages below.</summary>
    private static readonly ImmutableArray<SearchPlace> Hauler =
    [
        new("FL", 0.05m, 15), new("FR", 0.05m, 15), new("CL", 0.35m, 20), new("CR", 0.25m, 20), new("RL", 0.15m, 25), new("RR", 0.15m, 25),
    ];

    [Fact]
    public void Front_to_back_by_habit_takes_66_minutes_and_by_chance_for_each_minute_50()
    {
        Assert.Equal(65.75m, SearchOrder.Expected(Hauler).Value);
        var best = SearchOrder.Cheapest(Hauler);
        Assert.Equal("CL CR RL FL FR RR", string.Join(' ', best.Select(p => p.Name)));
        Assert.Equal(49.75m, SearchOrder.Expected(best).Value);
        Assert.Equal("0.35 × 20 + 0.25 × 40 + 0.15 × 65 + 0.05 × 80 + 0.05 × 95 + 0.15 × 95 = 49.75 min", SearchOrder.Expected(best).Line);
    }

    [Fact]
    public void A_fault_that_may_be_nowhere_costs_every_place() =>
        Assert.Equal((0.5m * 10) + (0.25m * 30) + (0.25m * 30), SearchOrder.Expected([new("A", 0.5m, 10), new("B", 0.25m, 20)]).Value);

    [Fact]
    public void No_other_order_is_cheaper() => Gen.Select(Gen.Int[1, 40], Gen.Int[1, 60]).List[1, 6].Sample(given =>
    {
        var most = Math.Max(100, given.Sum(g => g.Item1));
        ImmutableArray<SearchPlace> places = [.. given.Select((g, i) => new SearchPlace($"{i}", (decimal)g.Item1 / most, g.Item2))];
        var best = SearchOrder.Expected(SearchOrder.Cheapest(places)).Value;
        Assert.All(Orders(places), o => Assert.True(best <= SearchOrder.Expected(o).Value + 0.0000001m));
    }, iter: 60);

    private static IEnumerable<ImmutableArray<SearchPlace>> Orders(ImmutableArray<SearchPlace> places) => places.IsEmpty
        ? [[]]
        : places.SelectMany((p, i) => Orders(places.RemoveAt(i)).Select(rest => rest.Insert(0, p)));
}
