using System.Collections.Immutable;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Shims;

/// <summary>What a measured play asks for, and the pack that does it.</summary>
/// <param name="Wanted">Thickness that brings the play to its target: <c>1.85 − (0.31 − 0.10) = 1.64 mm</c>.</param>
/// <param name="Window">Thicknesses that keep the play in its window: <c>1.59 to 1.69 mm</c>.</param>
/// <param name="Pack">Null when no pack does it; then <see cref="Refusal"/> says why.</param>
public sealed record ShimChoice(Worked<Quantity> Wanted, QuantityRange Window, ShimPackMade? Pack)
{
    public ShimRefusal? Refusal { get; init; }
}

/// <param name="Pieces">At least one, the thickest first.</param>
/// <param name="Sum"><c>0.75 + 0.75 + 0.13 = 1.63 mm</c></param>
/// <param name="Play">With this pack in: <c>0.31 + (1.63 − 1.85) = 0.09 mm</c>.</param>
public sealed record ShimPackMade(ImmutableArray<Quantity> Pieces, Worked<Quantity> Sum, Worked<Quantity> Play)
{
    /// <param name="pieces">At least one, all in one unit.</param>
    public static Worked<Quantity> SumOf(ImmutableArray<Quantity> pieces)
    {
        var sum = pieces[0] with { Number = pieces.Sum(p => p.Number) };
        return new(sum, pieces.Length == 1 ? $"{sum}" : $"{string.Join(" + ", pieces.Select(p => p.NumberText))} = {sum}");
    }
}

/// <summary>Why no pack does it.</summary>
/// <param name="Window">Thicknesses that would.</param>
/// <param name="Thinner">The pack next below; null when the thinnest shim is too thick.</param>
/// <param name="Thicker">The pack next above; null when as many pieces as a pack may have are too thin.</param>
public sealed record ShimRefusal(QuantityRange Window, Quantity? Thinner, Quantity? Thicker, int Most)
{
    internal static ShimRefusal Of(ShimStock stock, QuantityRange window)
    {
        var thinner = stock.Sums.Where(s => window.Low is { } low && s <= low.Value.Number).Select(s => (decimal?)s).Max();
        var thicker = stock.Sums.Where(s => window.High is { } high && s >= high.Value.Number).Select(s => (decimal?)s).Min();
        return new ShimRefusal(window, thinner is { } a ? new Quantity(a, stock.Unit) : null, thicker is { } b ? new Quantity(b, stock.Unit) : null, stock.Most);
    }

    /// <summary><c>1.31 to 1.34 mm is needed; up to 4 pieces make 1.30 or 1.35 mm</c></summary>
    public string Says => $"{$"{Window}".Replace('-', '−')} is needed; {(Thinner, Thicker) switch
    {
        ({ } thin, { } thick) => $"up to {Most} pieces make {thin.NumberText} or {thick}",
        ({ } thin, null) => $"up to {Most} pieces make at most {thin}",
        (null, { } thick) => $"the thinnest pack is {thick}",
        _ => "no pack makes it",
    }}";
}
