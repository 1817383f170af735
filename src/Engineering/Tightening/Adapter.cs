using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Tightening;

/// <summary>
/// What to dial when a crow-foot or extension moves the bolt away from the wrench's drive: S = T·L/(L + E·cos a). In line
/// (0°) the bolt gets more than the dial says, across (90°) the same, folded back (180°) less. Holds when the hand is at
/// the centre of the grip. Source: US Army TM 9-254 figure 46.
/// </summary>
public static class Adapter
{
    /// <param name="torque">At the bolt.</param>
    /// <param name="length">Centre of drive to centre of grip.</param>
    /// <param name="extension">Centre of drive to centre of jaw.</param>
    /// <param name="angle">Between wrench and adapter, 0 to 180°.</param>
    /// <returns>In the unit of <paramref name="torque"/>; null when a length or the angle makes no sense.</returns>
    public static Worked<Quantity>? Setting(Quantity torque, Quantity length, Quantity extension, Quantity angle)
    {
        if (!Sensible.Positive(torque, "torque") || Reach(length, extension, angle) is not { } reach)
            return null;
        var setting = torque with { Number = torque.Number * length.Number / reach };
        var e = extension.In(length.Unit).Number;
        var under = $"({Figures.Plain(length.Number)} + {Figures.Plain(e)}{CosineText(angle)})";
        return new(setting, $"{torque.ToFigures(3)} × {Figures.Plain(length.Number)} / {under} = {setting.ToFigures(3)}");
    }

    /// <summary>Null also when the wrench has no length or the adapter no extension; an adapter without an angle is in line.</summary>
    public static Worked<Quantity>? Setting(Quantity torque, Wrench wrench, Wrench adapter) =>
        wrench.Length is { } length && adapter.Extension is { } extension
            ? Setting(torque, length.Value, extension.Value, adapter.Angle?.Value ?? Quantity.Of(0, "deg"))
            : null;

    /// <summary>What the bolt gets for a setting: the other way round.</summary>
    internal static Quantity? AtBolt(Quantity setting, Wrench wrench, Wrench adapter)
    {
        var angle = adapter.Angle?.Value ?? Quantity.Of(0, "deg");
        if (wrench.Length is not { } length || adapter.Extension is not { } extension || Reach(length.Value, extension.Value, angle) is not { } reach)
            return null;
        return setting with { Number = setting.Number * reach / length.Value.Number };
    }

    /// <summary>L + E·cos a in the unit of L; null below a hundredth of L or above a hundred times L: no such tool.</summary>
    private static decimal? Reach(Quantity length, Quantity extension, Quantity angle)
    {
        if (!Sensible.Positive(length, "length") || !Sensible.Is(extension, "length") || extension.Number < 0 || Cosine(angle) is not { } cosine)
            return null;
        var reach = length.Number + (extension.In(length.Unit).Number * cosine);
        return reach >= length.Number / 100 && reach <= length.Number * 100 ? reach : null;
    }

    private static decimal? Cosine(Quantity angle)
    {
        if (!Sensible.Is(angle, "angle") || angle.In(UnitTable.Get("deg")).Number is not (>= 0 and <= 180 and var degrees))
            return null;
        // rounded, so that across is exactly no change
        return Math.Round((decimal)Math.Cos((double)degrees * Math.PI / 180), 15);
    }

    private static string CosineText(Quantity angle) => angle.Number == 0 ? "" : $" × cos {Figures.Plain(angle.In(UnitTable.Get("deg")).Number)}°";
}
