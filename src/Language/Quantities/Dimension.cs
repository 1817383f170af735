namespace Witnessmark.Language.Quantities;

/// <summary>
/// What a unit measures, as powers of the base quantities. Torque and energy share powers, so torque carries the radian:
/// N·m of torque is energy per angle, and the two never pass for each other.
/// </summary>
public readonly record struct Dimension(int Length, int Mass, int Time, int Temperature, int Angle, int Count)
{
    public static Dimension None => default;

    public static Dimension operator *(Dimension a, Dimension b) =>
        new(a.Length + b.Length, a.Mass + b.Mass, a.Time + b.Time, a.Temperature + b.Temperature, a.Angle + b.Angle, a.Count + b.Count);

    public static Dimension operator /(Dimension a, Dimension b) =>
        new(a.Length - b.Length, a.Mass - b.Mass, a.Time - b.Time, a.Temperature - b.Temperature, a.Angle - b.Angle, a.Count - b.Count);
}
