using System.Collections.Immutable;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Tightening;

/// <summary>A torque whose number was meant in another unit: 235 lbf·ft where 235 N·m was meant.</summary>
/// <param name="Written">As it stands.</param>
/// <param name="Meant">The same number in the unit that fits.</param>
/// <param name="ShareWritten">Of proof load, as written.</param>
/// <param name="ShareMeant">Of proof load, as probably meant.</param>
/// <param name="Line"><c>235 lbf·ft is 319 N·m, 102 % of proof; 235 N·m is 75 %</c>.</param>
public sealed record UnitSlip(Quantity Written, Quantity Meant, decimal ShareWritten, decimal ShareMeant, string Line)
{
    /// <summary>Units on the scales of wrenches; the commonest first, which wins when two fit equally well.</summary>
    private static readonly ImmutableArray<Unit> OnScales = [.. new[] { "N·m", "lbf·ft", "lbf·in", "kgf·m" }.Select(UnitTable.Get)];

    /// <summary>Null when the torque fits the window as written, or in no other unit either.</summary>
    public static UnitSlip? Find(Quantity torque, TorqueWindow window)
    {
        if (!Sensible.Positive(torque, "torque") || window.Contains(torque) || window.ShareOfProof(torque) is not { } written)
            return null;
        var aim = window.Target.Value;
        var meant = OnScales
            .Where(u => u != torque.Unit)
            .Select(u => torque with { Unit = u })
            .Where(window.Contains)
            .OrderBy(q => Math.Abs(q.In(aim.Unit).Number - aim.Number))
            .Select(q => (Quantity?)q)
            .FirstOrDefault();
        if (meant is not { } fits || window.ShareOfProof(fits) is not { } share)
            return null;
        return new UnitSlip(torque, fits, written, share, Says(torque, fits, written, share, aim.Unit));
    }

    private static string Says(Quantity torque, Quantity fits, decimal written, decimal share, Unit unit)
    {
        var asWritten = torque.Unit == unit ? $"{torque} is" : $"{torque} is {torque.In(unit).ToFigures(3)},";
        return $"{asWritten} {Figures.Percent(written)} of proof; {fits} is {Figures.Percent(share)}";
    }
}
