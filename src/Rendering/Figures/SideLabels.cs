using System.Collections.Immutable;

namespace Witnessmark.Rendering.Figures;

/// <summary>
/// Texts beside a drawing, each as near to what it names as the others leave room, with a line to it. None lies over another.
/// </summary>
internal sealed class SideLabels
{
    private readonly ImmutableArray<(double At, ImmutableArray<string> Lines, double Top)> _labels;

    private SideLabels(ImmutableArray<(double, ImmutableArray<string>, double)> labels) => _labels = labels;

    /// <summary>Where the last one ends.</summary>
    public double Bottom => _labels.IsEmpty ? 0 : _labels.Max(l => l.Top + Height(l.Lines));

    /// <summary>Height of all texts, close together.</summary>
    public static double HeightOf(IEnumerable<string> texts, double width) => texts.Sum(t => Height(TextWidth.Wrap(t, width)));

    /// <param name="labels">From top to bottom: the y of what is named, and the text.</param>
    /// <param name="width">Of the column of texts, in mm.</param>
    /// <param name="from">No text begins higher.</param>
    /// <param name="to">No text ends lower, as long as there is room.</param>
    public static SideLabels Spread(IEnumerable<(double At, string Text)> labels, double width, double from, double to)
    {
        var all = labels.Select(l => (l.At, Lines: TextWidth.Wrap(l.Text, width), Top: 0.0)).ToArray();
        var free = from;
        for (var i = 0; i < all.Length; i++)
        {
            all[i].Top = Math.Max(free, all[i].At - (Height(all[i].Lines) / 2));
            free = all[i].Top + Height(all[i].Lines);
        }
        var limit = Math.Max(to, from + all.Sum(l => Height(l.Lines)));
        for (var i = all.Length - 1; i >= 0; i--)
        {
            all[i].Top = Math.Min(all[i].Top, limit - Height(all[i].Lines));
            limit = all[i].Top;
        }
        return new SideLabels([.. all]);
    }

    /// <param name="edge">x where the lines turn toward their texts.</param>
    /// <param name="x">Of the texts.</param>
    /// <param name="from">x where the line to each thing begins; the edge when there is none.</param>
    public void Draw(Svg svg, double edge, double x, ImmutableArray<double> from = default)
    {
        foreach (var (i, (at, lines, top)) in _labels.Index())
        {
            var y = top + (Height(lines) / 2);
            svg.Polyline([(from.IsDefault ? edge : from[i], at), (edge + 2, at), (x - 3, y), (x - 1, y)], 0.35);
            svg.Lines(x, top + (TextWidth.Leading / 2), lines);
        }
    }

    private static double Height(ImmutableArray<string> lines) => lines.Length * TextWidth.Leading;
}
