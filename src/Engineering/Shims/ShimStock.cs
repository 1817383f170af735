using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Shims;

/// <summary>
/// Every thickness that can be put together from the sizes in stock, each with the fewest pieces. Of packs with as few
/// pieces and the same sum the one with the thickest pieces counts: <c>0.75 + 0.75 + 0.25 + 0.10</c>, not <c>0.75 + 0.50 + 0.50 + 0.10</c>.
/// </summary>
public sealed class ShimStock
{
    public const int MostSizes = 24;
    public const int MostPieces = 10;
    private const int MostSums = 60_000;

    private readonly ImmutableArray<Quantity> _sizes;
    private readonly Dictionary<decimal, int> _pieces;

    private ShimStock(ImmutableArray<Quantity> sizes, Dictionary<decimal, int> pieces, int most)
    {
        (_sizes, _pieces, Most) = (sizes, pieces, most);
        Step = sizes[0] with { Number = sizes.Select(s => s.Number).Aggregate(Divisor) };
        Sums = [.. pieces.Keys.Order()];
    }

    /// <summary>Pieces in one pack.</summary>
    public int Most { get; }

    public Unit Unit => _sizes[0].Unit;

    /// <summary>Sums lie this far apart at the least, whatever is put together: the greatest length that divides all sizes.</summary>
    public Quantity Step { get; }

    /// <summary>In <see cref="Unit"/>, thinnest first.</summary>
    internal ImmutableArray<decimal> Sums { get; }

    /// <summary>
    /// Null without a size, with a size that is no length above zero, with more than 24 sizes or 10 pieces, or when the sizes
    /// are so odd that they make more sums than anybody can survey.
    /// </summary>
    /// <param name="sizes">Each in stock as often as it is needed; in the unit of the first.</param>
    /// <param name="most">Pieces in one pack, from 1.</param>
    public static ShimStock? Of(IEnumerable<Quantity> sizes, int most)
    {
        ImmutableArray<Quantity> all = [.. sizes.Take(MostSizes + 1)];
        if (all.Length is 0 or > MostSizes || most is < 1 or > MostPieces || all.Any(s => !Sensible.Positive(s, "length")))
            return null;
        ImmutableArray<Quantity> thickFirst = [.. all.Select(s => s.In(all[0].Unit)).DistinctBy(s => s.Number).OrderByDescending(s => s.Number)];
        return Fewest(thickFirst, most) is { } pieces ? new ShimStock(thickFirst, pieces, most) : null;
    }

    /// <summary>Of a data sheet: null also when a size is missing.</summary>
    public static ShimStock? Of(ShimItem item) => Of(item.Sizes.Select(s => s.Value), item.Most?.Value ?? ShimItem.UsualMost);

    /// <summary>The fewest pieces that make exactly this sum, the thickest first; null when none do.</summary>
    public ImmutableArray<Quantity>? Pieces(Quantity sum)
    {
        if (!Sensible.Is(sum, "length") || !_pieces.TryGetValue(sum.In(Unit).Number, out var left))
            return null;
        var pieces = ImmutableArray.CreateBuilder<Quantity>();
        for (var rest = sum.In(Unit).Number; left > 0; left--)
        {
            var next = _sizes.First(s => left == 1 ? s.Number == rest : _pieces.GetValueOrDefault(rest - s.Number) == left - 1);
            pieces.Add(next);
            rest -= next.Number;
        }
        return pieces.ToImmutable();
    }

    internal int Count(decimal sum) => _pieces[sum];

    private static Dictionary<decimal, int>? Fewest(ImmutableArray<Quantity> sizes, int most)
    {
        var fewest = new Dictionary<decimal, int>();
        List<decimal> last = [0];
        for (var pieces = 1; pieces <= most; pieces++)
        {
            var next = new List<decimal>();
            foreach (var sum in last.SelectMany(s => sizes.Select(size => s + size.Number)))
            {
                if (!fewest.TryAdd(sum, pieces))
                    continue;
                if (fewest.Count > MostSums)
                    return null;
                next.Add(sum);
            }
            last = next;
        }
        return fewest;
    }

    private static decimal Divisor(decimal a, decimal b)
    {
        while (b != 0)
            (a, b) = (b, a % b);
        return a;
    }
}
