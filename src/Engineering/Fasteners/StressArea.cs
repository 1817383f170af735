using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Fasteners;

/// <summary>
/// The area that carries the load in a threaded bolt. As = π/4·((d2 + d3)/2)² = π/4·(d − 13√3/24·P)², ISO 898-1 clause 9.1.6.1
/// with d2 and d3 of ISO 724. For every ISO metric thread; the standard's own tables run from M1.6 to M39 and are rounded to
/// three figures.
/// </summary>
public static class StressArea
{
    private const decimal Pi = 3.1415926535897932384626433833m;
    private const decimal RootOfThree = 1.7320508075688772935274463415m;
    private const decimal Coefficient = 13m * RootOfThree / 24m;

    /// <summary>In mm². Null for a thread that cannot be cut: no diameter, no pitch, or a pitch that leaves no core.</summary>
    public static Worked<Quantity>? Of(MetricThread thread)
    {
        if (!Sensible.Positive(thread.Diameter, "length") || !Sensible.Positive(thread.Pitch, "length"))
            return null;
        var mm = UnitTable.Get("mm");
        var d = thread.Diameter.In(mm);
        var p = thread.Pitch.In(mm);
        if (!Sensible.Positive(d, "length") || !Sensible.Positive(p, "length") || p.Number >= d.Number)
            return null;
        var between = d.Number - (Coefficient * p.Number);
        var area = new Quantity(Pi / 4 * between * between, UnitTable.Get("mm²"));
        return new(area, $"π/4 × ({Figures.Plain(d.Number)} − 0.9382 × {Figures.Plain(p.Number)})² = {area.ToFigures(4)}");
    }
}
