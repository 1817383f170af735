using System.Collections.Immutable;
using Witnessmark.Engineering;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Rendering.Figures;

/// <param name="Label">As it is marked: S1.</param>
public sealed record ShimPiece(string Label, Quantity Thickness);

/// <summary>Shims put together to one thickness, with the sum worked out.</summary>
public sealed record ShimPack(ImmutableArray<ShimPiece> Pieces, Worked<Quantity> Sum);

/// <summary>A pack of shims from the side, to one scale, each with its thickness, and what they come to.</summary>
public static class ShimStack
{
    private const double Piece = 46;
    private const double Column = 44;
    private const double Thinnest = 2;
    private const double Tallest = 110;
    private const double Top = 2;

    /// <summary>mm drawn for 1 mm of shim.</summary>
    public static double Scale(ShimPack pack)
    {
        var all = pack.Pieces.Select(Thick).ToList();
        var wanted = Math.Max(SideLabels.HeightOf(pack.Pieces.Select(Says), Column) / all.Sum(), Thinnest / all.Min());
        return Math.Min(wanted, Tallest / all.Sum());
    }

    /// <param name="pack">At least one piece, each thicker than nothing.</param>
    public static string Draw(string id, ShimPack pack, Words words)
    {
        var (scale, sum) = (Scale(pack), $"{pack.Sum.Value}");
        var left = TextWidth.Of(sum) + 6;
        var (edge, width) = (left + Piece, left + Piece + 12 + Column);
        var bottom = Top + (pack.Pieces.Sum(Thick) * scale);
        var worked = TextWidth.Wrap(pack.Sum.Line, width - 2);
        var labels = SideLabels.Spread(Middles(pack, scale).Zip(pack.Pieces.Select(Says)), Column, 0.5, bottom);
        var text = Math.Max(bottom, labels.Bottom) + 3;
        var svg = new Svg(id, width, text + (worked.Length * TextWidth.Leading), words.ShimPack, $"{string.Join(", ", pack.Pieces.Select(Says))}: {pack.Sum.Line}");
        var y = Top;
        foreach (var thick in pack.Pieces.Select(p => Thick(p) * scale))
        {
            svg.Rect(left, y, Piece, thick, "#fff", 0.5);
            y += thick;
        }
        svg.Polyline([(left - 1, Top), (left - 4, Top), (left - 4, bottom), (left - 1, bottom)], 0.5);
        svg.Text(left - 5, (Top + bottom) / 2, sum, Anchor.End);
        labels.Draw(svg, edge + 0.5, edge + 11);
        return svg.Lines(1, text + (TextWidth.Leading / 2), worked).Write();
    }

    private static IEnumerable<double> Middles(ShimPack pack, double scale)
    {
        var y = Top;
        foreach (var thick in pack.Pieces.Select(p => Thick(p) * scale))
            yield return (y += thick) - (thick / 2);
    }

    private static double Thick(ShimPiece piece) => piece.Thickness.In("mm");

    private static string Says(ShimPiece piece) => $"{piece.Label} {piece.Thickness.NumberText}\u00A0{piece.Thickness.Unit}";
}
