using System.Globalization;

namespace Witnessmark.Rendering.Figures;

/// <summary>Bolts of a group on their circle, evenly spaced as the data sheet counts them: 1 at twelve o'clock, then clockwise.</summary>
public static class BoltCircle
{
    private const double HeadOfPitch = 0.42;
    private const double LargestHead = 5.2;
    private const double Number = 3.9;
    private const double Margin = 4.6;

    /// <summary>Centre of a bolt in mm, y downward.</summary>
    public static (double X, double Y) Position(int bolt, int count, double size)
    {
        var radius = Radius(count, size);
        var angle = 2 * Math.PI * (bolt - 1) / count;
        return ((size / 2) + (radius * Math.Sin(angle)), (size / 2) - (radius * Math.Cos(angle)));
    }

    /// <param name="id">Unique on the page.</param>
    /// <param name="count">At least 1.</param>
    /// <param name="size">Edge of the square drawing in mm.</param>
    /// <param name="inside">Lines in the middle: thread, what fits one way.</param>
    public static string Draw(string id, int count, double size, string title, IReadOnlyList<string> inside)
    {
        var names = string.Join(", ", Enumerable.Range(1, count).Select(i => i.ToString(CultureInfo.InvariantCulture)));
        var svg = new Svg(id, size, size, title, names);
        var centre = size / 2;
        svg.Circle(centre, centre, Radius(count, size), "none", 0.5);
        svg.Path($"M{Svg.N(centre)} {Svg.N(Margin + 0.2)}l-2.6 -4.4h5.2z", "#000");
        for (var bolt = 1; bolt <= count; bolt++)
        {
            var (x, y) = Position(bolt, count, size);
            svg.Circle(x, y, Head(count, size), "#fff", 0.6).Label(x, y, Number, bolt.ToString(CultureInfo.InvariantCulture));
        }
        for (var line = 0; line < inside.Count; line++)
            svg.Label(centre, centre + ((line - ((inside.Count - 1) / 2.0)) * 5.2), Number, inside[line]);
        return svg.Write();
    }

    // the head's edge and the twelve-o'clock mark stay inside the drawing
    private static double Radius(int count, double size)
    {
        var largest = (size / 2) - Margin - LargestHead;
        return count < 2 ? 0 : largest;
    }

    private static double Head(int count, double size) =>
        count < 2 ? LargestHead : Math.Min(LargestHead, HeadOfPitch * 2 * Math.PI * Radius(count, size) / count);
}
