using System.Collections.Immutable;
using System.Globalization;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Language.Model;

/// <summary>A thread as it is designated. What the designation does not say, the standard does.</summary>
public abstract record BoltThread(Quantity Diameter);

/// <summary>An ISO metric thread, <c>M16x2</c>.</summary>
public sealed record MetricThread(Quantity Diameter, Quantity Pitch) : BoltThread(Diameter)
{
    public override string ToString() => $"M{Diameter.NumberText}x{Pitch.NumberText}";
}

/// <summary>A unified inch thread, <c>5/8-11 UNC</c>.</summary>
/// <param name="Size">As it is said: <c>5/8</c>, <c>1-1/8</c>, <c>#10</c>.</param>
/// <param name="PerInch">Threads to the inch.</param>
/// <param name="Series">UNC, UNF, UN, 8UN or UNS; a class of fit may follow: <c>UNC-2A</c>.</param>
public sealed record InchThread(string Size, Quantity Diameter, int PerInch, string Series) : BoltThread(Diameter)
{
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Size}-{PerInch} {Series}");
}

/// <summary>Sizes of the coarse and fine series of ASME B1.1, by the name that a size goes by. Fine is null where the series has none.</summary>
/// <param name="Diameter">In inches.</param>
public sealed record InchSize(string Name, decimal Diameter, int? Coarse, int? Fine);

/// <summary>
/// Threads to the inch of the UNC and UNF series from #0 to 1-1/2, ASME B1.1. From 1/4 up each is held against published tables
/// by a test; the numbered sizes are from memory.
/// </summary>
public static class InchSizes
{
    public static readonly ImmutableArray<InchSize> All =
    [
        new("#0", 0.060m, null, 80),
        new("#1", 0.073m, 64, 72),
        new("#2", 0.086m, 56, 64),
        new("#3", 0.099m, 48, 56),
        new("#4", 0.112m, 40, 48),
        new("#5", 0.125m, 40, 44),
        new("#6", 0.138m, 32, 40),
        new("#8", 0.164m, 32, 36),
        new("#10", 0.190m, 24, 32),
        new("#12", 0.216m, 24, 28),
        new("1/4", 0.25m, 20, 28),
        new("5/16", 0.3125m, 18, 24),
        new("3/8", 0.375m, 16, 24),
        new("7/16", 0.4375m, 14, 20),
        new("1/2", 0.5m, 13, 20),
        new("9/16", 0.5625m, 12, 18),
        new("5/8", 0.625m, 11, 18),
        new("3/4", 0.75m, 10, 16),
        new("7/8", 0.875m, 9, 14),
        new("1", 1m, 8, 12),
        new("1-1/8", 1.125m, 7, 12),
        new("1-1/4", 1.25m, 7, 12),
        new("1-3/8", 1.375m, 6, 12),
        new("1-1/2", 1.5m, 6, 12),
    ];

    public static InchSize? Find(string name) => All.FirstOrDefault(s => s.Name == name);
}
