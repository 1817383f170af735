using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Tightening;

/// <summary>Which end of a wrench's range a setting is beyond.</summary>
public enum WrenchBound
{
    /// <summary>None: the wrench suits.</summary>
    Inside,
    BelowLowestMark,
    BelowHouseShare,
    AboveHouseShare,
    AboveGreatestMark,
}

/// <summary>Whether a wrench can be trusted with a setting.</summary>
/// <param name="Broken">The bound that is broken; the scale's own goes before the house's.</param>
/// <param name="Share">Of the wrench's greatest value.</param>
/// <param name="Trusted">From the higher of lowest mark and house share to the lower of greatest mark and house share.</param>
/// <param name="Line"><c>45 N·m is 6 % of 750 N·m</c>.</param>
public sealed record WrenchFit(WrenchBound Broken, decimal Share, QuantityRange Trusted, string Line)
{
    public bool Fits => Broken == WrenchBound.Inside;
}

/// <summary>
/// The range of a torque wrench. ISO 6789:2003 tests and trusts a setting wrench from 20 to 100 % of its greatest value; the
/// 2017 edition starts at the lowest mark, and 20 % remains as practice. Hence both: inside the scale, and inside the house's
/// share of the greatest value.
/// </summary>
public static class WrenchRange
{
    /// <summary>Null when the wrench has no range with two ends, or the setting is no torque.</summary>
    public static WrenchFit? Check(Wrench wrench, Quantity setting, HouseLimits limits)
    {
        if (wrench.Range?.Value is not { Low: { } low, High: { } high } || !Sensible.Positive(high.Value, "torque"))
            return null;
        if (!Sensible.Is(low.Value, "torque") || !Sensible.Is(setting, "torque"))
            return null;
        if (limits.WrenchShare.Low is < 0 or > 1 || !Sensible.Share(limits.WrenchShare.High))
            return null;
        var greatest = high.Value;
        var from = greatest with { Number = greatest.Number * limits.WrenchShare.Low };
        var to = greatest with { Number = greatest.Number * limits.WrenchShare.High };
        var trusted = QuantityRange.Between(from.CompareTo(low.Value) > 0 ? from : low.Value, to.CompareTo(greatest) < 0 ? to : greatest);
        var broken =
            setting.CompareTo(low.Value) < 0 ? WrenchBound.BelowLowestMark
            : setting.CompareTo(greatest) > 0 ? WrenchBound.AboveGreatestMark
            : setting.CompareTo(from) < 0 ? WrenchBound.BelowHouseShare
            : setting.CompareTo(to) > 0 ? WrenchBound.AboveHouseShare
            : WrenchBound.Inside;
        var share = setting.In(greatest.Unit).Number / greatest.Number;
        return new WrenchFit(broken, share, trusted, $"{setting.ToFigures(3)} is {Figures.Percent(share)} of {greatest}");
    }
}
