using Witnessmark.Engineering.Fasteners;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Tightening;

/// <summary>
/// What a group of bolts may be tightened with: T = K·d·F, F = f·Sp·As (short form after Shigley, eq. 8-27). The window is the
/// house's share of the torque at proof load. K is a handbook range for a state of the threads, good for ±25 %: a joint test
/// is better. Torques in N·m and loads in kN, for inch threads in lbf·ft and lbf.
/// </summary>
/// <param name="ProofFraction">The share of proof load that is aimed at: the group's own, or 0.75 (reusable joints, common practice).</param>
public sealed record TorqueWindow(
    BoltThread Thread,
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

    private const string InchPounds = "lbf·in";

    // beyond what any thread has (0.08 to 0.35): a slip of the point, not a slippery bolt
    private const decimal SmallestNutFactor = 0.01m;
    private const decimal LargestNutFactor = 1m;

    /// <summary>Null when thread, class or nut factor is missing or makes no sense (K from 0.01 to 1).</summary>
    public static TorqueWindow? For(FastenerGroup group, HouseLimits limits) =>
        BoltStrength.Of(group) is { } bolt && group.NutFactor is { } k ? For(bolt, k.Value, limits, group.ProofFraction?.Value) : null;

    public static TorqueWindow? For(BoltStrength bolt, decimal nutFactor, HouseLimits limits, decimal? proofFraction = null)
    {
        var fraction = proofFraction ?? UsualProofFraction;
        if (nutFactor is < SmallestNutFactor or > LargestNutFactor || !Sensible.Share(fraction) || !Sensible.Share(limits.TorqueWindow.Low) || !Sensible.Share(limits.TorqueWindow.High))
            return null;
        if (Fasteners.StressArea.Of(bolt.Thread) is not { } area || Fasteners.ProofLoad.Of(bolt) is not { } proof)
            return null;
        var preload = Part(fraction, proof.Value, 4);
        var atProof = Torque(nutFactor, bolt.Thread, proof.Value);
        return new TorqueWindow(
            bolt.Thread,
            nutFactor,
            area,
            proof,
            atProof,
            Part(limits.TorqueWindow.Low, atProof.Value, 3),
            Part(limits.TorqueWindow.High, atProof.Value, 3),
            preload,
            Torque(nutFactor, bolt.Thread, preload.Value),
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
        return new(load, $"{ByHand(torque)} / ({Figures.Plain(NutFactor)} × {Thread.Diameter}) = {load.ToFigures(4)}");
    }

    /// <summary>With inches below the line, feet above it would give a twelfth.</summary>
    private string ByHand(Quantity torque) =>
        Thread is InchThread && torque.Unit != UnitTable.Get(InchPounds) && torque.In(UnitTable.Get(InchPounds)).ToFigures(4) is var inches ? $"{torque} = {inches}; {inches}" : $"{torque}";

    public bool Contains(Quantity torque) =>
        Sensible.Is(torque, "torque") && torque.CompareTo(Low.Value) >= 0 && torque.CompareTo(High.Value) <= 0;

    private static Worked<Quantity> Torque(decimal nutFactor, BoltThread thread, Quantity load)
    {
        if (thread is InchThread)
            return InInches(nutFactor, thread.Diameter, load);
        // mm × kN is N·m
        var torque = Quantity.Of(nutFactor * thread.Diameter.In(UnitTable.Get("mm")).Number * load.Number, "N·m");
        return new(torque, $"{Figures.Plain(nutFactor)} × {thread.Diameter} × {load.ToFigures(4)} = {torque.ToFigures(3)}");
    }

    private static Worked<Quantity> InInches(decimal nutFactor, Quantity diameter, Quantity load)
    {
        var inchPounds = Quantity.Of(nutFactor * diameter.In(UnitTable.Get("in")).Number * load.Number, InchPounds);
        var torque = inchPounds.In(UnitTable.Get("lbf·ft"));
        return new(torque, $"{Figures.Plain(nutFactor)} × {diameter} × {load.ToFigures(4)} = {inchPounds.ToFigures(4)} = {torque.ToFigures(3)}");
    }

    private static Worked<Quantity> Part(decimal share, Quantity whole, int figures)
    {
        var part = whole with { Number = share * whole.Number };
        return new(part, $"{Figures.Plain(share)} × {whole.ToFigures(figures)} = {part.ToFigures(figures)}");
    }
}
