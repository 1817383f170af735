using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Measuring;

/// <summary>One value that was judged, and the band it falls in; null when it falls in none.</summary>
public readonly record struct JudgedValue(Quantity Value, string? Band);

/// <summary>
/// A reading held against its bands. <c>least most mean spread sum</c> judge one value over all pieces and points;
/// <c>each</c> (also when nothing is written) judges every point.
/// </summary>
public sealed record Judgement(ImmutableArray<JudgedValue> Values)
{
    /// <summary>The bands found, in the order met, each once; a value in no band adds none.</summary>
    public IEnumerable<string> Bands => Values.Select(v => v.Band).OfType<string>().Distinct(StringComparer.Ordinal);

    /// <summary>The band that every value falls in; null when they differ or one falls in none.</summary>
    public string? Band => Values.Select(v => v.Band).Distinct(StringComparer.Ordinal).Take(2).ToList() is [{ } only] ? only : null;

    /// <summary>Null when nothing was measured, kinds differ, or the word of judging is unknown.</summary>
    public static Judgement? Of(ReadingItem item, ImmutableArray<ImmutableArray<Quantity>> rows)
    {
        if (Measured.Of(item, rows) is not { } measured || ValuesOf(item.Judge?.Value ?? "each", measured) is not { } values)
            return null;
        var apart = item.Judge?.Value == "spread";
        return new Judgement([.. values.Select(v => new JudgedValue(v, BandOf(item, v, apart)))]);
    }

    private static ImmutableArray<Quantity>? ValuesOf(string judge, Measured measured) => judge switch
    {
        "each" => [.. measured.Points],
        "least" => [measured.Least],
        "most" => [measured.Most],
        "mean" => [measured.Mean],
        "spread" => [measured.Spread],
        "sum" => [measured.Sum],
        _ => null,
    };

    private static string? BandOf(ReadingItem item, Quantity value, bool apart)
    {
        foreach (var band in item.Bands)
            if (band.Range.Value is var range && range.Unit.SameKindAs(value.Unit) && range.Contains(apart ? Apart(value, range.Unit) : value))
                return band.Name.Value;
        return null;
    }

    /// <summary>A difference in another unit: 9 °F apart is 5 °C apart.</summary>
    private static Quantity Apart(Quantity spread, Unit unit) =>
        spread.Unit == unit ? spread : new Quantity(spread.Number * spread.Unit.Factor / unit.Factor, unit);
}
