using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Fasteners;

/// <summary>
/// The area that carries the load in a threaded bolt. Metric: As = π/4·((d2 + d3)/2)² = π/4·(d − 13√3/24·P)², ISO 898-1 clause 9.1.6.1
/// with d2 and d3 of ISO 724, for every ISO metric thread; the standard's own tables run from M1.6 to M39 and are rounded to
/// three figures. Inch: As = π/4·(d − 0.9743/n)² for n threads to the inch, ASME B1.1 (the constant from memory; it gives all 33 areas of
/// the published tables within 0.4 %).
/// </summary>
public static class StressArea
{
    private const decimal Pi = 3.1415926535897932384626433833m;
    private const decimal RootOfThree = 1.7320508075688772935274463415m;
    private const decimal Coefficient = 13m * RootOfThree / 24m;
    private const decimal InchCoefficient = 0.9743m;

    /// <summary>In mm², for an inch thread in in². Null for a thread that cannot be cut: no diameter, no pitch, or a pitch that leaves no core.</summary>
    public static Worked<Quantity>? Of(BoltThread thread) => thread switch
    {
        MetricThread metric => Metric(metric),
        InchThread inch => Inch(inch),
        _ => null,
    };

    private static Worked<Quantity>? Metric(MetricThread thread)
    {
        if (!Sensible.Positive(thread.Diameter, "length") || !Sensible.Positive(thread.Pitch, "length"))
            return null;
        var mm = UnitTable.Get("mm");
        var d = thread.Diameter.In(mm);
        var p = thread.Pitch.In(mm);
        if (!Sensible.Positive(d, "length") || !Sensible.Positive(p, "length") || p.Number >= d.Number)
            return null;
        var area = Circle(d.Number - (Coefficient * p.Number), "mm²");
        return new(area, $"π/4 × ({Figures.Plain(d.Number)} − 0.9382 × {Figures.Plain(p.Number)})² = {area.ToFigures(4)}");
    }

    private static Worked<Quantity>? Inch(InchThread thread)
    {
        if (!Sensible.Positive(thread.Diameter, "length") || thread.PerInch <= 0)
            return null;
        var d = thread.Diameter.In(UnitTable.Get("in"));
        if (!Sensible.Positive(d, "length") || 1m / thread.PerInch >= d.Number)
            return null;
        var area = Circle(d.Number - (InchCoefficient / thread.PerInch), "in²");
        return new(area, $"π/4 × ({Figures.Plain(d.Number)} − 0.9743 / {Figures.Plain(thread.PerInch)})² = {area.ToFigures(4)}");
    }

    private static Quantity Circle(decimal diameter, string unit) => new(Pi / 4 * diameter * diameter, UnitTable.Get(unit));
}
