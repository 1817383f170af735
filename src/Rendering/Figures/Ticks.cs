using System.Collections.Immutable;

namespace Witnessmark.Rendering.Figures;

/// <summary>Round numbers along a scale.</summary>
internal static class Ticks
{
    private static readonly double[] Steps = [1, 2, 5, 10];

    /// <summary>The smallest round step that gives at most so many marks between two values.</summary>
    public static double Step(double low, double high, int most)
    {
        var rough = Math.Max(high - low, 1e-9) / Math.Max(1, most);
        var ten = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        return Steps.First(s => s * ten >= rough * (1 - 1e-9)) * ten;
    }

    /// <summary>Multiples of the step from low to high, both included.</summary>
    public static ImmutableArray<double> Between(double low, double high, double step)
    {
        var first = (int)Math.Ceiling((low / step) - 1e-6);
        var last = (int)Math.Floor((high / step) + 1e-6);
        return [.. Enumerable.Range(first, Math.Max(0, last - first + 1)).Select(i => i * step)];
    }
}
