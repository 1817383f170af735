using System.Collections.Immutable;
using System.Globalization;
using Witnessmark.Engineering.Fasteners;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Engineering.Tests;

/// <summary>Things of a data sheet, from the words a data sheet would use.</summary>
internal static class Given
{
    private static readonly Location Nowhere = new(new SourceText("given.yaml", ""), new TextSpan(0, 0));

    public static Located<T> Written<T>(T value) => new(value, Nowhere);

    public static Quantity Q(string text) => Read(QuantityReader.Quantity(text), text);

    public static Toleranced T(string text) => Read(QuantityReader.Toleranced(text), text);

    public static QuantityRange R(string text) => Read(QuantityReader.Range(text), text);

    public static decimal D(string text) => decimal.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary><c>M16x2</c></summary>
    public static MetricThread Thread(string designation) =>
        designation.TrimStart('M').Split('x') is [var d, var p] ? new(Q($"{d} mm"), Q($"{p} mm")) : throw new ArgumentException(designation);

    /// <summary><c>5/8-11 UNC</c>, of a size in the table.</summary>
    public static InchThread Inch(string designation)
    {
        var (size, rest) = (designation[..designation.LastIndexOf('-')], designation[(designation.LastIndexOf('-') + 1)..].Split(' '));
        return new(size, Quantity.Of(InchSizes.Find(size)!.Diameter, "in"), int.Parse(rest[0], CultureInfo.InvariantCulture), rest[1]);
    }

    /// <summary><c>M16x2</c> of a class, or <c>5/8-11 UNC</c> of a grade.</summary>
    public static BoltStrength Bolt(string thread, string mark) => new(thread[0] == 'M' ? Thread(thread) : Inch(thread), mark);

    public static FastenerGroup Group(string thread, string strength, decimal k, decimal? fraction = null) =>
        new(Written("bolts"), Node)
        {
            Thread = Written<BoltThread>(Thread(thread)),
            PropertyClass = Written(strength),
            NutFactor = Written(k),
            ProofFraction = fraction is { } f ? Written(f) : null,
        };

    public static Wrench Wrench(string range, string? scale = null, string? length = null) =>
        new(Written("TW"), Node)
        {
            Kind = Written("torque wrench"),
            Range = Written(R(range)),
            Scale = scale is null ? null : Written(Q(scale)),
            Length = length is null ? null : Written(Q(length)),
        };

    public static Wrench CrowFoot(string extension, string? angle = null) =>
        new(Written("crow-foot"), Node)
        {
            Kind = Written("adapter"),
            Extension = Written(Q(extension)),
            Angle = angle is null ? null : Written(Q(angle)),
        };

    public static PartKind Part(string name, string? thickness, string? wornAt = null) =>
        new(Written(name), Node)
        {
            Thickness = thickness is null ? null : Written(T(thickness)),
            WornAt = wornAt is null ? null : Written(Q(wornAt)),
        };

    public static StackRow Row(int times, params string[] parts) =>
        new(times, [.. parts.Select(p => new StackPiece(Written(p), null))], Nowhere);

    public static PartStack Stack(string cavity, string? overrun, string? margin, params ImmutableArray<StackRow> order) =>
        new(Written("stack"), Node)
        {
            Cavity = Written(T(cavity)),
            SealOverrun = overrun is null ? null : Written(Q(overrun)),
            Margin = margin is null ? null : Written(Q(margin)),
            Order = order,
        };

    /// <summary><paramref name="bands"/>: <c>thin: below 4.92 mm</c>.</summary>
    public static ReadingItem Judged(string? judge, string? of, params string[] bands) =>
        new(Written("reading"), Node)
        {
            Judge = judge is null ? null : Written(judge),
            Of = of is null ? null : Written(of),
            Bands = [.. bands.Select(b => b.Split(": ")).Select(b => new ReadingBand(Written(b[0]), Written(R(b[1]))))],
        };

    /// <summary>One row a piece: <c>4.98 5.02 5.01 mm</c>.</summary>
    public static ImmutableArray<ImmutableArray<Quantity>> Rows(params string[] rows) => [.. rows.Select(Row)];

    private static ImmutableArray<Quantity> Row(string row)
    {
        var words = row.Split(' ');
        return [.. words[..^1].Select(w => Q($"{w} {words[^1]}"))];
    }

    private static DataNode Node => new DataMap([], Nowhere);

    private static TValue Read<TValue>(Parsed<TValue> parsed, string text)
        where TValue : struct =>
        parsed.Ok ? parsed.Value : throw new ArgumentException($"{text}: {parsed.Fault!.Problem}");
}
