using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Fasteners;

/// <summary>
/// The pull that a bolt bears without lasting stretch: Fp = Sp·As (ISO 898-1). The standard's tables round to three figures,
/// some of them from the unrounded area: allow 0.5 % against them.
/// </summary>
public static class ProofLoad
{
    /// <summary>In kN. Null when the class has no such size or the thread cannot be cut.</summary>
    public static Worked<Quantity>? Of(MetricThread thread, string propertyClass)
    {
        if (StressArea.Of(thread) is not { } area || PropertyClasses.ProofStress(propertyClass, thread.Diameter) is not { } stress)
            return null;
        var load = Quantity.Of(stress.Number * area.Value.Number / 1000, "kN");
        return new(load, $"{stress} × {area.Value.ToFigures(4)} = {load.ToFigures(4)}");
    }
}
