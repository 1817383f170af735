using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Fasteners;

/// <summary>
/// The pull that a bolt bears without lasting stretch: Fp = Sp·As (ISO 898-1, SAE J429). The standards' tables round to three figures,
/// some of them from the unrounded area: allow 0.5 % against them.
/// </summary>
public static class ProofLoad
{
    /// <summary>In kN for a metric thread, in lbf for one in inches. Null when the standard has no such size or the thread cannot be cut.</summary>
    public static Worked<Quantity>? Of(BoltStrength bolt)
    {
        if (StressArea.Of(bolt.Thread) is not { } area || bolt.ProofStress is not { } stress)
            return null;
        var load = bolt.Thread is InchThread
            ? Quantity.Of(stress.Number * area.Value.Number, "lbf")
            : Quantity.Of(stress.Number * area.Value.Number / 1000, "kN");
        return new(load, $"{stress} × {area.Value.ToFigures(4)} = {load.ToFigures(4)}");
    }
}
