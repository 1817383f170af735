using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Stacks;

/// <summary>
/// How far the piston travels when every part of the stack is worn to its limit, against the travel at which it leaves its seal
/// bore. Each part can be above its limit and the sum still too thin: that is why limits are summed. In the cavity's unit.
/// </summary>
/// <param name="Travel"><c>86.2 − (41.4 + 24.8 + 12.0) = 8.0 mm</c>, with the nominal cavity.</param>
/// <param name="Allowed">Seal overrun less the margin: <c>8.6 − 0.5 = 8.1 mm</c>; no margin written counts as none.</param>
/// <param name="InDeepestCavity">Travel with the cavity at the upper end of its tolerance.</param>
public sealed record WearTravel(Worked<Quantity> Travel, Worked<Quantity> Allowed, Quantity InDeepestCavity)
{
    public bool Fits => Travel.Value.CompareTo(Allowed.Value) <= 0;

    /// <summary>
    /// Null when cavity, seal overrun, a part or a thickness is missing or is no length. A part without <c>worn-at</c> does not wear:
    /// it counts with the lower end of its tolerance.
    /// </summary>
    public static WearTravel? Of(PartStack stack, Func<string, PartKind?> part)
    {
        if (stack is not { Cavity.Value: { } cavity, SealOverrun.Value: { } overrun } || StackSum.Of(stack, part) is not { } shares)
            return null;
        if (!Sensible.Positive(cavity.Target, "length") || !Sensible.Positive(overrun, "length"))
            return null;
        var margin = stack.Margin?.Value ?? overrun with { Number = 0 };
        if (!Sensible.Is(margin, "length") || shares.Any(s => !Sensible.Positive(Worn(s), "length")))
            return null;
        var unit = cavity.Target.Unit;
        var decimals = cavity.Target.Decimals;
        var worn = shares.Select(s => new Quantity(s.Count * Worn(s).In(unit).Number, unit)).ToList();
        var sum = string.Join(" + ", worn.Select(w => Figures.Trimmed(w, decimals).NumberText));
        var travel = cavity.Target with { Number = cavity.Target.Number - worn.Sum(w => w.Number) };
        var allowed = overrun with { Number = overrun.Number - margin.In(overrun.Unit).Number };
        return new WearTravel(
            new(travel, $"{cavity.Target.NumberText} − ({sum}) = {Figures.Signed(Figures.Trimmed(travel, decimals))}"),
            new(allowed.In(unit), $"{overrun.NumberText} − {margin.In(overrun.Unit).NumberText} = {allowed}"),
            travel with { Number = travel.Number + (cavity.Tolerance is { Unit.Kind: "length" } t ? t.In(unit).Number : 0) });
    }

    private static Quantity Worn(StackShare share) => share.Part.WornAt?.Value ?? share.Thickness.Low;
}
