using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Tightening;

/// <summary>
/// What a group of bolts may be tightened with: T = K·d·F, F = f·Sp·As (short form after Shigley, eq. 8-27). The window is the
/// house's share of the torque at proof load. K is a handbook range for a state of the threads, good for ±25 %: a joint test
/// is better. Torques in N·m, loads in kN.
/// </summary>
/// <param name="ProofFraction">The share of proof load that is aimed at: the group's own, or 0.75 (reusable joints, common practice).</param>
public sealed record TorqueWindow(
    MetricThread Thread,
    decimal NutFactor,
    Worked<Quantity> StressArea,
    Worked<Quantity> ProofLoad,
    Worked<Quantity> TProof,
    Worked<Quantity> Low,
    Worked<Quantity> High,
    Worked<Quantity> Preload,
    Worked<Quantity> Target,
    decimal ProofFraction)
{
    public const decimal UsualProofFraction = 0.75m;

    // beyond what any thread has (0.08 to 0.35): a slip of the point, not a slippery bolt
    private const decimal SmallestNutFactor = 0.01m;
    private const decimal LargestNutFactor = 1m;

    /// <summary>Null when thread, class or nut factor is missing or makes no sense (K from 0.01 to 1).</summary>
    public static TorqueWindow? For(FastenerGroup group, HouseLimits limits) =>
        group is { Thread: { } thread, PropertyClass: { } strength, NutFactor: { } k }
            ? For(thread.Value, strength.Value, k.Value, limits, group.ProofFraction?.Value)
            : null;

    public static TorqueWindow? For(MetricThread thread, string propertyClass, decimal nutFactor, HouseLimits limits, decimal? proofFraction = null)
    {
        var fraction = proofFraction ?? UsualProofFraction;
        if (nutFactor is < SmallestNutFactor or > LargestNutFactor || !Sensible.Share(fraction) || !Sensible.Share(limits.TorqueWindow.Low) || !Sensible.Share(limits.TorqueWindow.High))
            return null;
        if (Fasteners.StressArea.Of(thread) is not { } area || Fasteners.ProofLoad.Of(thread, propertyClass) is not { } proof)
            return null;
        var preload = Part(fraction, proof.Value, 4);
        var atProof = Torque(nutFactor, thread, proof.Value);
        return new TorqueWindow(
            thread,
            nutFactor,
            area,
            proof,
            atProof,
            Part(limits.TorqueWindow.Low, atProof.Value, 3),
            Part(limits.TorqueWindow.High, atProof.Value, 3),
            preload,
            Torque(nutFactor, thread, preload.Value),
            fraction);
    }

    /// <summary>The share of proof load that a torque brings, were K exactly right; null when it is no torque.</summary>
    public decimal? ShareOfProof(Quantity torque) =>
        Sensible.Is(torque, "torque") ? torque.In(TProof.Value.Unit).Number / TProof.Value.Number : null;

    /// <summary>The pull that a torque brings, were K exactly right: <c>235 N·m / (0.15 × 16 mm) = 97.92 kN</c>; null when it is no torque.</summary>
    public Worked<Quantity>? PreloadAt(Quantity torque)
    {
        if (ShareOfProof(torque) is not { } share || !Sensible.Number(share))
            return null;
        var load = ProofLoad.Value with { Number = share * ProofLoad.Value.Number };
        return new(load, $"{torque} / ({Figures.Plain(NutFactor)} × {Thread.Diameter}) = {load.ToFigures(4)}");
    }

    public bool Contains(Quantity torque) =>
        Sensible.Is(torque, "torque") && torque.CompareTo(Low.Value) >= 0 && torque.CompareTo(High.Value) <= 0;

    private static Worked<Quantity> Torque(decimal nutFactor, MetricThread thread, Quantity load)
    {
        // mm × kN is N·m
        var torque = Quantity.Of(nutFactor * thread.Diameter.In(UnitTable.Get("mm")).Number * load.Number, "N·m");
        return new(torque, $"{Figures.Plain(nutFactor)} × {thread.Diameter} × {load.ToFigures(4)} = {torque.ToFigures(3)}");
    }

    private static Worked<Quantity> Part(decimal share, Quantity whole, int figures)
    {
        var part = whole with { Number = share * whole.Number };
        return new(part, $"{Figures.Plain(share)} × {whole.ToFigures(figures)} = {part.ToFigures(figures)}");
    }
}
