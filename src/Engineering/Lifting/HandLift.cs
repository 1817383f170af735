using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Lifting;

/// <summary>
/// A mass that people carry, against what one of them may lift: mass / (limit × people). The limit of the house is as a rule
/// 23 kg, the load constant of the revised NIOSH lifting equation (NIOSH 94-110), which holds close to the body, at knuckle
/// height, without turning: at arm's reach even a share below 1 is too much.
/// </summary>
/// <param name="Index">Above 1: too heavy.</param>
public sealed record HandLift(Worked<decimal> Index)
{
    private const int MostPeople = 20;

    public bool Fits => Index.Value <= 1;

    /// <param name="people">1 to 20.</param>
    /// <returns>Null when a number makes no sense.</returns>
    public static HandLift? Of(Quantity mass, int people, Quantity limit)
    {
        if (!Sensible.Positive(mass, "mass") || !Sensible.Positive(limit, "mass") || people is < 1 or > MostPeople)
            return null;
        var each = limit.In(mass.Unit);
        var index = mass.Number / (each.Number * people);
        return new HandLift(new Worked<decimal>(index, $"{mass.NumberText} / ({each.ToFigures(3).NumberText} × {people}) = {Figures.Fixed(index, 2)}"));
    }
}
