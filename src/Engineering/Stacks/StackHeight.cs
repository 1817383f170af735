using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Stacks;

/// <summary>
/// How high a stack of parts stands and what clearance it leaves in its cavity, from the data sheet. All in the cavity's unit.
/// Tolerances: all at their ends at once (worst case), and root sum of squares with every piece taken as independent.
/// </summary>
/// <param name="Height">Nominal.</param>
/// <param name="Clearance">Cavity less height, nominal: <c>86.2 − (9 × 5.00 + 8 × 3.20 + 2 × 6.20) = 3.2 mm</c>.</param>
/// <param name="WorstCase">Of the clearance, plus or minus; parts without a tolerance count as exact.</param>
/// <param name="RootSumSquare">Of the clearance, plus or minus.</param>
public sealed record StackHeight(Worked<Quantity> Height, Worked<Quantity> Clearance, Worked<Quantity> WorstCase, Worked<Quantity> RootSumSquare)
{
    /// <summary>Null when the cavity, a part or a thickness is missing or is no length.</summary>
    public static StackHeight? Of(PartStack stack, Func<string, PartKind?> part)
    {
        if (stack.Cavity?.Value is not { } cavity || !Sensible.Positive(cavity.Target, "length") || StackSum.Of(stack, part) is not { } shares)
            return null;
        if (cavity.Tolerance is { } tolerance && !Sensible.Is(tolerance, "length"))
            return null;
        var unit = cavity.Target.Unit;
        var sum = string.Join(" + ", shares.Select(s => $"{s.Count} × {s.Thickness.Target.In(unit).NumberText}"));
        var height = new Quantity(shares.Sum(s => s.Count * s.Thickness.Target.In(unit).Number), unit);
        var clearance = cavity.Target with { Number = cavity.Target.Number - height.Number };
        var decimals = cavity.Target.Decimals;
        return new StackHeight(
            new(height, $"{sum} = {Figures.Trimmed(height, decimals)}"),
            new(clearance, $"{cavity.Target.NumberText} − ({sum}) = {Figures.Signed(Figures.Trimmed(clearance, decimals))}"),
            Worst(cavity, shares, unit),
            Likely(cavity, shares, unit));
    }

    /// <summary>
    /// Clearance of the parts that were measured: mean of the cavity less the sum of the pieces, <c>86.20 − 82.96 = 3.24 mm</c>,
    /// in the cavity's unit. Null when there are no pieces or one is no length.
    /// </summary>
    public static Worked<Quantity>? Measured(Quantity cavityMean, IEnumerable<Quantity> pieces)
    {
        ImmutableArray<Quantity> thicknesses = [.. pieces];
        if (!Sensible.Positive(cavityMean, "length") || thicknesses.IsEmpty || thicknesses.Any(t => !Sensible.Positive(t, "length")))
            return null;
        var height = cavityMean with { Number = thicknesses.Sum(t => t.In(cavityMean.Unit).Number) };
        var clearance = cavityMean with { Number = cavityMean.Number - height.Number };
        var decimals = thicknesses.Max(t => t.Decimals);
        var cavity = Figures.Fixed(cavityMean.Number, decimals);
        return new(clearance, $"{cavity} − {Figures.Fixed(height.Number, decimals)} = {Figures.Signed(clearance.RoundedTo(decimals))}");
    }

    private static Worked<Quantity> Worst(Toleranced cavity, ImmutableArray<StackShare> shares, Unit unit)
    {
        var worst = new Quantity(Off(cavity, unit).Number + shares.Sum(s => s.Count * Off(s.Thickness, unit).Number), unit);
        var sum = string.Join(" + ", shares.Select(s => $"{s.Count} × {Off(s.Thickness, unit).NumberText}"));
        return new(worst, $"{Off(cavity, unit).NumberText} + {sum} = ± {worst.ToFigures(3)}");
    }

    private static Worked<Quantity> Likely(Toleranced cavity, ImmutableArray<StackShare> shares, Unit unit)
    {
        var squares = Square(Off(cavity, unit)) + shares.Sum(s => s.Count * Square(Off(s.Thickness, unit)));
        var likely = new Quantity((decimal)Math.Sqrt(squares), unit);
        var sum = string.Join(" + ", shares.Select(s => $"{s.Count} × {Off(s.Thickness, unit).NumberText}²"));
        return new(likely, $"√({Off(cavity, unit).NumberText}² + {sum}) = ± {likely.ToFigures(2)}");
    }

    private static Quantity Off(Toleranced length, Unit unit) => length.Tolerance?.In(unit) ?? new Quantity(0, unit);

    private static double Square(Quantity off) => (double)off.Number * (double)off.Number;
}
