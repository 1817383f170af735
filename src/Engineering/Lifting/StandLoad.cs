using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Lifting;

/// <summary>
/// What comes on a stand: the static mass of the wheel end times the share that the other end hands over (factor of the data
/// sheet). Its pad presses on the ground with that weight over its area; the ground is taken as level and evenly loaded.
/// </summary>
/// <param name="Mass">In the unit of the static mass.</param>
/// <param name="Force">In kN.</param>
public sealed record StandLoad(Worked<Quantity> Mass, Worked<Quantity> Force)
{
    private const decimal Gravity = 9.80665m;

    /// <param name="onWheelEnd">Mass that stands on it at rest.</param>
    /// <param name="transfer">1 to 10.</param>
    /// <returns>Null when a number makes no sense.</returns>
    public static StandLoad? Of(Quantity onWheelEnd, decimal transfer)
    {
        if (!Sensible.Positive(onWheelEnd, "mass") || transfer is < 1 or > 10)
            return null;
        var mass = onWheelEnd with { Number = onWheelEnd.Number * transfer };
        var kilograms = mass.In(UnitTable.Get("kg"));
        var force = new Quantity(kilograms.Number * Gravity / 1000, UnitTable.Get("kN"));
        return new StandLoad(
            new(mass, $"{onWheelEnd.NumberText} × {Figures.Plain(transfer)} = {mass.ToFigures(4)}"),
            new(force, $"{kilograms.ToFigures(4).NumberText} × {Figures.Plain(Gravity)} / 1000 = {force.ToFigures(3)}"));
    }

    /// <param name="side">Of a square pad.</param>
    /// <returns>In kPa; null when the side makes no sense.</returns>
    public Worked<Quantity>? PressureUnder(Quantity side)
    {
        if (!Sensible.Positive(side, "length"))
            return null;
        var metres = side.In(UnitTable.Get("m"));
        // a pad of less than a millimetre is a slip, and its square next to nothing
        if (metres.Number is < 0.001m or > 1000)
            return null;
        var pressure = new Quantity(Force.Value.Number / (metres.Number * metres.Number), UnitTable.Get("kPa"));
        return new(pressure, $"{Force.Value.ToFigures(3)} / ({Figures.Plain(metres.Number)} m)² = {pressure.ToFigures(3)}");
    }
}
