using System.Collections.Immutable;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Shims;

/// <summary>Neighbouring plays that one pack answers.</summary>
/// <param name="Stays">The play is in its window already: the old pack goes back in.</param>
/// <param name="Choice">Of the first of these plays.</param>
/// <param name="LastPlay">With the pack in, when the last of these plays was measured.</param>
public sealed record ShimRow(Quantity From, Quantity To, bool Stays, ShimChoice Choice, Quantity? LastPlay);

/// <summary>Play measured → pack, for every play that can be measured, with one old pack.</summary>
public static class ShimTable
{
    private const int MostPlays = 500;

    /// <summary>
    /// From the lowest play to the highest, in steps of the digits that were written. Empty when an end is open or is no length, or
    /// when there are more than 500 steps between them.
    /// </summary>
    public static ImmutableArray<ShimRow> Of(ShimSetting setting, Quantity old, QuantityRange plausible)
    {
        if (plausible is not { Low.Value: { } low, High.Value: { } high } || !Sensible.Is(low, "length") || !Sensible.Is(high, "length"))
            return [];
        var decimals = Math.Max(low.Decimals, high.Decimals);
        var step = new decimal(1, 0, 0, false, (byte)Math.Min(decimals, 9));
        var top = high.In(low.Unit).Number;
        if (top < low.Number || (top - low.Number) / step > MostPlays)
            return [];
        var rows = ImmutableArray.CreateBuilder<ShimRow>();
        for (var number = low.Number; number <= top; number += step)
            Put(rows, setting, old, low with { Number = number });
        return rows.ToImmutable();
    }

    private static void Put(ImmutableArray<ShimRow>.Builder rows, ShimSetting setting, Quantity old, Quantity play)
    {
        if (setting.Choose(old, play) is not { } choice)
            return;
        var row = new ShimRow(play, play, setting.Play.Contains(play), choice, choice.Pack?.Play.Value);
        if (rows.Count > 0 && Alike(rows[^1], row))
            rows[^1] = rows[^1] with { To = play, LastPlay = row.LastPlay };
        else
            rows.Add(row);
    }

    private static bool Alike(ShimRow a, ShimRow b) =>
        a.Stays == b.Stays && (a.Stays || a.Choice.Pack?.Sum.Value == b.Choice.Pack?.Sum.Value);
}
