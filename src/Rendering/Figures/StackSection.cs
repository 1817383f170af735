using Witnessmark.Engineering.Printing;

namespace Witnessmark.Rendering.Figures;

/// <summary>
/// Section through a stack, the end that building starts from at the top. Thicknesses are to one scale; parts are pulled
/// apart row by row so that each stands beside its cells. Steel is plain, lining is hatched; teeth outside reach to the
/// left, teeth inside to the right.
/// </summary>
public static class StackSection
{
    public static readonly double Width = SheetMeasures.Drawing.Millimetres;
    private const double Reach = 4;
    private const double Gap = 0.7;
    private const double EndBar = 4.6;
    private const double Lining = 0.36;

    /// <param name="Thickness">mm; null when the data sheet has none: drawn as thick as the mean of the others.</param>
    /// <param name="FacedUp">For a part lined on one side: whether that side is toward the start. Null: no single faced side.</param>
    public sealed record Piece(string Label, decimal? Thickness, bool Outer, bool? FacedUp);

    /// <summary>mm drawn for 1 mm of part, so that the thickest row fits.</summary>
    public static double Scale(IReadOnlyList<IReadOnlyList<Piece>> rows, double rowHeight) =>
        rows.Select((row, i) => Room(i, rows.Count, rowHeight, row.Count) / row.Sum(p => Thick(p, rows))).DefaultIfEmpty(1).Min();

    /// <param name="lastEnd">What the stack ends at; empty when it goes on.</param>
    public static string Draw(string id, IReadOnlyList<IReadOnlyList<Piece>> rows, double rowHeight, string lastEnd, string title)
    {
        var description = string.Join(", ", rows.SelectMany(r => r).Select(p => p.Label));
        var height = rows.Count * rowHeight;
        var svg = new Svg(id, Width, height, title, description);
        var hatch = svg.Hatch();
        var scale = Scale(rows, rowHeight);
        for (var i = 0; i < rows.Count; i++)
        {
            // in the middle of its line
            var spare = Room(i, rows.Count, rowHeight, rows[i].Count) - (rows[i].Sum(p => Thick(p, rows)) * scale);
            var y = (i * rowHeight) + Gap + (spare / 2);
            foreach (var piece in rows[i])
            {
                var h = Thick(piece, rows) * scale;
                One(svg, piece, y, h, hatch);
                y += h + Gap;
            }
        }
        if (lastEnd.Length > 0)
            svg.Rect(0.3, height - EndBar, Width - 0.6, EndBar - 0.2, "#000").Label(Width / 2, height - (EndBar / 2) - 0.1, 3.9, lastEnd, "#fff");
        return svg.Write();
    }

    private static void One(Svg svg, Piece piece, double y, double h, string hatch)
    {
        var x = piece.Outer ? 0.4 : 0.4 + Reach;
        var w = Width - Reach - 0.8;
        svg.Rect(x, y, w, h, piece.Outer ? "#fff" : hatch, 0.5);
        if (!piece.Outer)
            svg.Rect(x, y + (h * Lining), w, h * (1 - (2 * Lining)), "#fff", 0.35);
        else if (piece.FacedUp is { } up)
            svg.Rect(x, up ? y : y + (h / 2), w, h / 2, hatch, 0.4);
    }

    private static double Room(int row, int rows, double rowHeight, int pieces) =>
        rowHeight - (row == rows - 1 ? EndBar : 0) - ((pieces + 1) * Gap);

    private static double Thick(Piece piece, IReadOnlyList<IReadOnlyList<Piece>> rows)
    {
        if (piece.Thickness is { } mm and > 0)
            return (double)mm;
        var known = rows.SelectMany(r => r).Select(p => p.Thickness).OfType<decimal>().Where(t => t > 0).ToList();
        return known.Count == 0 ? 1 : (double)known.Average();
    }
}
