using System.Globalization;
using System.Text.RegularExpressions;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Comparing;

/// <summary>Written values beside each other: how much a number has changed, and which way a limit has moved.</summary>
internal static partial class Values
{
    /// <summary>Of the one number in both; null when there is none, or the kinds differ.</summary>
    public static decimal? Share(string? old, string? made)
    {
        // a count has no unit
        if (Plain(old) is { } was && Plain(made) is { } now)
            return was == 0 ? null : (now - was) / was;
        if (Number(old) is not { } before || Number(made) is not { } after || !before.Unit.SameKindAs(after.Unit))
            return null;
        var (from, to) = (before.Unit.ToSi(before.Number), after.Unit.ToSi(after.Number));
        return from == 0 ? null : (to - from) / Math.Abs(from);
    }

    /// <summary>Of the one number that differs between two sentences; null when they differ in more.</summary>
    public static decimal? ShareInProse(string? old, string? made)
    {
        var (before, after) = (Figure().Matches(old ?? ""), Figure().Matches(made ?? ""));
        if (before.Count != 1 || after.Count != 1 || Figure().Replace(old!, "") != Figure().Replace(made!, ""))
            return null;
        var (from, to) = (Plain(before[0].Value), Plain(after[0].Value));
        return from is null or 0 || to is null ? null : (to - from) / from;
    }

    [GeneratedRegex(@"\d+(?:\.\d+)?")]
    private static partial Regex Figure();

    private static decimal? Plain(string? text) => decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;

    /// <summary>Whether less or more passes than before; of a target its tolerance counts.</summary>
    public static Sense Sense(string? old, string? made)
    {
        if (old is null || made is null)
            return Comparing.Sense.Other;
        if (QuantityReader.Toleranced(old) is { Ok: true, Value: { Tolerance: not null } before } && QuantityReader.Toleranced(made) is { Ok: true, Value: { Tolerance: not null } after }
            && before.Target.Unit.SameKindAs(after.Target.Unit))
            return Sense(QuantityRange.Between(before.Low, before.High), QuantityRange.Between(after.Low, after.High));
        return QuantityReader.Range(old) is { Ok: true, Value: var from } && QuantityReader.Range(made) is { Ok: true, Value: var to} && from.Unit.SameKindAs(to.Unit)
            ? Sense(from, to)
            : Comparing.Sense.Other;
    }

    private static Sense Sense(QuantityRange old, QuantityRange made)
    {
        // a single value has no inside
        if (IsOne(old) || IsOne(made))
            return Comparing.Sense.Other;
        var (low, high) = (Lower(made.Low, old.Low), -Lower(Turned(made.High), Turned(old.High)));
        return (low, high) switch
        {
            (0, 0) => Comparing.Sense.Other,
            ( <= 0, >= 0) => Comparing.Sense.Looser,
            ( >= 0, <= 0) => Comparing.Sense.Tighter,
            _ => Comparing.Sense.Other,
        };
    }

    private static bool IsOne(QuantityRange range) => range is { Low: { } low, High: { } high } && low.Value.CompareTo(high.Value) == 0;

    /// <summary>Negative when the first low end lets more through.</summary>
    private static int Lower(Bound? a, Bound? b) => (a, b) switch
    {
        (null, null) => 0,
        (null, _) => -1,
        (_, null) => 1,
        ({ } x, { } y) when x.Value.CompareTo(y.Value) is var order and not 0 => order,
        ({ } x, { } y) => y.Inclusive.CompareTo(x.Inclusive),
    };

    // a high end is a low end seen from the other side
    private static Bound? Turned(Bound? bound) => bound is { } b ? b with { Value = b.Value with { Number = -b.Value.Number } } : null;

    private static Quantity? Number(string? text)
    {
        if (text is null)
            return null;
        if (QuantityReader.Toleranced(text) is { Ok: true } toleranced)
            return toleranced.Value.Target;
        return QuantityReader.Range(text) is { Ok: true, Value: { Low: var low, High: var high } } && (low is null) != (high is null) ? (low ?? high)!.Value.Value : null;
    }
}
