using System.Collections.Immutable;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Lifting;

/// <summary>
/// What a crane may carry at a radius: the chart at the next larger radius that stands there, never a value in between, times the
/// share that the house uses (common practice of riggers, no source).
/// </summary>
/// <param name="Charted">Radius and capacity of the chart that count.</param>
/// <param name="May">In the chart's unit.</param>
public sealed record CranePoint((Quantity Radius, Quantity Capacity) Charted, Worked<Quantity> May)
{
    public bool Carries(Quantity onTheHook) => onTheHook.CompareTo(May.Value) <= 0;

    /// <param name="chart">Radius to capacity, in any order.</param>
    /// <param name="radius">From the slewing axis to the hook.</param>
    /// <param name="share">Of the capacity: above 0, at most 1.</param>
    /// <returns>Null when the chart ends before the radius or a number makes no sense.</returns>
    public static CranePoint? Of(ImmutableArray<(Quantity Radius, Quantity Capacity)> chart, Quantity radius, decimal share)
    {
        if (!Sensible.Positive(radius, "length") || share is <= 0 or > 1)
            return null;
        var reaching = chart
            .Where(c => Sensible.Positive(c.Radius, "length") && Sensible.Positive(c.Capacity, "mass") && c.Radius.CompareTo(radius) >= 0)
            .OrderBy(c => c.Radius.Si)
            .ToList();
        if (reaching is not [var point, ..])
            return null;
        var may = point.Capacity with { Number = point.Capacity.Number * share };
        return new CranePoint(point, new(may, $"{point.Capacity.NumberText} × {Figures.Percent(share)} = {may.ToFigures(4)}"));
    }
}
