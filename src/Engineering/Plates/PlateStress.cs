using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Plates;

/// <summary>
/// Bending stress at the middle of a round plate that lies on the rim of an opening, pressure from one side:
/// σ = 3(3 + ν)/8 · p · (r/t)², ν = 0.3 of steel. Theory of thin plates, small deflection, simply supported edge (from memory
/// of the textbooks; a clamped edge would bend it less). Of a plate thicker than half its radius it says nothing.
/// </summary>
/// <param name="Stress">In MPa, or in psi of a pressure in psi: in the unit of the pressure.</param>
/// <param name="Allowed">Yield / safety, in the same unit.</param>
public sealed record PlateStress(Worked<Quantity> Stress, Worked<Quantity> Allowed)
{
    private const decimal Poisson = 0.3m;
    private const decimal Factor = 3 * (3 + Poisson) / 8;
    private const decimal ThinUpTo = 0.5m;

    public bool Holds => Stress.Value.CompareTo(Allowed.Value) <= 0;

    /// <param name="pressure">That it holds against.</param>
    /// <param name="radius">Of the opening, a length.</param>
    /// <param name="thickness">Of the plate, a length.</param>
    /// <param name="yield">Of its material, a pressure.</param>
    /// <param name="safety">Yield over stress: 1 to 10.</param>
    /// <returns>Null when a number makes no sense or the plate is too thick to be reckoned as one.</returns>
    public static PlateStress? Of(Quantity pressure, Quantity radius, Quantity thickness, Quantity yield, decimal safety)
    {
        if (!Sensible.Positive(pressure, "pressure") || !Sensible.Positive(yield, "pressure") || safety is < 1 or > 10)
            return null;
        if (!Sensible.Positive(radius, "length") || !Sensible.Positive(thickness, "length"))
            return null;
        var across = radius.In(thickness.Unit);
        // a foil bursts whatever is reckoned, and a block does not bend
        if (thickness.Number > ThinUpTo * across.Number || across.Number > 10_000 * thickness.Number)
            return null;
        var slender = across.Number / thickness.Number;
        var stress = pressure with { Number = Factor * pressure.Number * slender * slender };
        var allowed = yield with { Number = yield.Number / safety };
        return new PlateStress(
            new(stress, $"3 × (3 + 0.3) / 8 × {pressure.NumberText} × ({Figures.Plain(across.Number)} / {thickness.NumberText})² = {stress.ToFigures(3)}"),
            new(allowed.In(stress.Unit), $"{yield.NumberText} / {Figures.Plain(safety)} = {allowed.ToFigures(3)}"));
    }
}
