using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Measuring;

/// <summary>
/// What was measured: the points of each piece. A reading of a part has one row a piece; a reading that is not of a part
/// measures several things at one place each, so every point is a piece of its own (the shims of a pack).
/// </summary>
public sealed record Measured
{
    private Measured(ImmutableArray<ImmutableArray<Quantity>> pieces, Unit unit) => (Pieces, Unit) = (pieces, unit);

    /// <summary>At least one piece, each with at least one point, all in <see cref="Unit"/>.</summary>
    public ImmutableArray<ImmutableArray<Quantity>> Pieces { get; }

    /// <summary>Of the first point; the others are converted to it.</summary>
    public Unit Unit { get; }

    public IEnumerable<Quantity> Points => Pieces.SelectMany(p => p);

    /// <summary>Null when a row or everything is empty, kinds differ, or a number is larger than any machine's.</summary>
    public static Measured? Of(ReadingItem item, ImmutableArray<ImmutableArray<Quantity>> rows) =>
        Of(item.Of is null ? [.. rows.SelectMany(r => r).Select(p => ImmutableArray.Create(p))] : rows);

    public static Measured? Of(ImmutableArray<ImmutableArray<Quantity>> pieces)
    {
        if (pieces.IsDefaultOrEmpty || pieces.Any(p => p.IsDefaultOrEmpty) || pieces[0][0].Unit is not { } unit)
            return null;
        if (pieces.Any(p => p.Any(q => !Sensible.Is(q, unit.Kind))))
            return null;
        return new Measured([.. pieces.Select(p => p.Select(q => q.In(unit)).ToImmutableArray())], unit);
    }

    /// <summary>One value that stands for itself, such as the nominal cavity.</summary>
    public static Measured? Of(Quantity value) => Of([[value]]);

    public Quantity Least => new(Points.Min(p => p.Number), Unit);

    public Quantity Most => new(Points.Max(p => p.Number), Unit);

    /// <summary>Most less least, over all points. Of temperatures it is a difference.</summary>
    public Quantity Spread => new(Most.Number - Least.Number, Unit);

    /// <summary>Over the pieces, of the mean of each piece's points. Not rounded.</summary>
    public Quantity Mean => new(Pieces.Average(MeanOf), Unit);

    /// <summary>Over the pieces, of the mean of each piece's points: the height of a pile.</summary>
    public Quantity Sum => new(Pieces.Sum(MeanOf), Unit);

    /// <summary>Decimals that were read.</summary>
    public int Decimals => Points.Max(p => p.Decimals);

    private static decimal MeanOf(ImmutableArray<Quantity> points) => points.Average(p => p.Number);
}
