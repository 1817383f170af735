using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Lifting;

/// <summary>
/// What one leg of a sling carries: load / (legs that carry × cos a), a between leg and vertical. The legs are taken as equally
/// long with the load's centre below the hook. More than two legs count as two: of a stiff load two may carry nearly all while
/// the others only steady it (US Navy NAVEDTRA 14081, figure 13-50). Gear of its own and jerks are not in it.
/// </summary>
/// <param name="Mass">As if so much hung straight from one leg, to be held against the rating: in the load's unit.</param>
/// <param name="Force">The same as a force, in N.</param>
/// <param name="Carrying">Legs that count: 1 or 2.</param>
/// <param name="ToVertical">In degrees; 0 for a single leg, which hangs straight.</param>
public sealed record LegLoad(Worked<Quantity> Mass, Worked<Quantity> Force, int Carrying, Quantity ToVertical)
{
    private const int MostCarrying = 2;
    private const int FlattestDegrees = 1;
    private const decimal Gravity = 9.80665m;

    /// <param name="mass">Of the load.</param>
    /// <param name="legs">At least 1.</param>
    /// <param name="toHorizontal">Between leg and horizontal, 1 to 90°; not asked for with one leg.</param>
    /// <returns>Null when mass, legs or angle make no sense.</returns>
    public static LegLoad? Of(Quantity mass, int legs, Quantity? toHorizontal)
    {
        if (!Sensible.Positive(mass, "mass") || legs < 1 || ToVerticalOf(legs, toHorizontal) is not { } degrees)
            return null;
        var carrying = Math.Min(legs, MostCarrying);
        var cosine = Math.Round((decimal)Math.Cos((double)degrees * Math.PI / 180), 15);
        var leg = mass with { Number = mass.Number / (carrying * cosine) };
        var shown = leg.ToFigures(3);
        var under = carrying == 1 ? "1" : $"({Figures.Plain(carrying)} × cos {Figures.Plain(degrees)}°)";
        return new LegLoad(
            new(leg, $"{mass.NumberText} / {under} = {shown}"),
            ForceOf(leg),
            carrying,
            new Quantity(degrees, UnitTable.Get("deg")));
    }

    private static Worked<Quantity> ForceOf(Quantity leg)
    {
        var kilograms = leg.In(UnitTable.Get("kg"));
        var force = new Quantity(kilograms.Number * Gravity, UnitTable.Get("N"));
        return new(force, $"{kilograms.ToFigures(3)} × {Figures.Plain(Gravity)} m/s² = {force.ToFigures(3)}");
    }

    private static decimal? ToVerticalOf(int legs, Quantity? toHorizontal)
    {
        if (legs == 1)
            return 0;
        if (toHorizontal is not { } angle || !Sensible.Is(angle, "angle"))
            return null;
        var degrees = Math.Round(angle.In(UnitTable.Get("deg")).Number, 6);
        return degrees is >= FlattestDegrees and <= 90 ? 90 - degrees : null;
    }
}
