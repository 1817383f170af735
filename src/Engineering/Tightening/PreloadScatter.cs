using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Tightening;

/// <summary>
/// How far above the aim the preload may come out, as a share of proof load. The tolerance of the torque, the wrench (±4 %
/// above 10 N·m, ISO 6789) and friction (±25 % for lubricated threads, handbook value) are taken as independent: their root
/// sum of squares is what the house limit holds. The worst case has all three at their ends at once; friction too low by 25 %
/// divides by 0.75.
/// </summary>
/// <param name="Aimed">Share of proof at the target torque.</param>
public sealed record PreloadScatter(decimal Aimed, Worked<decimal> RootSumSquare, Worked<decimal> WorstCase)
{
    /// <summary>
    /// <paramref name="torque"/> without a tolerance counts as exact. Null when it is no positive torque, its tolerance is as large
    /// as itself, or the house's scatters are not from 0 to below 1.
    /// </summary>
    public static PreloadScatter? Of(TorqueWindow window, Toleranced torque, HouseLimits limits)
    {
        if (!Sensible.Positive(torque.Target, "torque") || window.ShareOfProof(torque.Target) is not { } aimed || !Sensible.Number(aimed))
            return null;
        if (ShareOf(torque) is not (>= 0 and < 1 and var tolerance))
            return null;
        if (limits.WrenchScatter is not (>= 0 and < 1 and var wrench) || limits.FrictionScatter is not (>= 0 and < 1 and var friction))
            return null;
        var squares = (tolerance * tolerance) + (wrench * wrench) + (friction * friction);
        var scatter = (decimal)Math.Sqrt((double)squares);
        var likely = aimed * (1 + scatter);
        var worst = aimed * (1 + tolerance) * (1 + wrench) / (1 - friction);
        var start = $"{Figures.Fixed(aimed, 3)} × ";
        return new PreloadScatter(
            aimed,
            new(likely, $"{start}(1 + √({Show(tolerance)}² + {Show(wrench)}² + {Show(friction)}²)) = {Figures.Fixed(likely, 3)} of proof"),
            new(worst, $"{start}(1 + {Show(tolerance)}) × (1 + {Show(wrench)}) / (1 − {Show(friction)}) = {Figures.Fixed(worst, 3)} of proof"));
    }

    private static decimal? ShareOf(Toleranced torque)
    {
        if (torque.Tolerance is not { } tolerance)
            return 0;
        return Sensible.Is(tolerance, "torque") ? tolerance.In(torque.Target.Unit).Number / torque.Target.Number : null;
    }

    private static string Show(decimal share) => Figures.Fixed(share, 3);
}
