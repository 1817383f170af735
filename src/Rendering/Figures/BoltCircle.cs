using System.Collections.Immutable;
using System.Globalization;
using Witnessmark.Engineering.Printing;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Rendering.Figures;

/// <summary>Bolts on a circle.</summary>
/// <param name="Count">At least 1.</param>
/// <param name="PitchCircle">Through the bolts' centres; null: drawn not to scale, and said so.</param>
/// <param name="AcrossFlats">Of a head; null: heads are drawn as large as a number needs.</param>
/// <param name="Passes">Rings to ink outside every bolt; 0 to 9.</param>
/// <param name="Inside">Lines in the middle: thread, what fits one way.</param>
public sealed record BoltedRing(int Count, Quantity? PitchCircle, Quantity? AcrossFlats, int Passes, ImmutableArray<string> Inside);

/// <summary>
/// Bolts of a group on their circle, evenly spaced as the data sheet counts them: 1 at twelve o'clock, then clockwise. Outside
/// of each stand its passes, one below the other, to be inked as the wrench clicks.
/// </summary>
public static class BoltCircle
{
    private const double RoundHead = 5.2;
    private const double HeadOfPitch = 0.42;
    private const double Mark = 4.6;
    private const double Pass = 2.7;
    private const double BesidePass = 5.9;
    private const double ForNumber = 1.15;
    private const double NumberInHead = 6.4;

    /// <summary>Without passes the drawing is as large as the sheet has room for it.</summary>
    private static readonly double Smallest = (SheetMeasures.Circle.Millimetres / 2) - RoundHead - Mark;

    /// <summary>Radius drawn: numbers of neighbours do not touch.</summary>
    public static double Radius(BoltedRing ring) => ring.Count < 2 ? 0 : Math.Max(Smallest, ring.Count * ForNumber);

    /// <summary>Edge of the square drawing in mm.</summary>
    public static double Size(BoltedRing ring) => 2 * (Radius(ring) + RoundHead + Mark + (ring.Passes * BesidePass));

    /// <summary>mm drawn for 1 mm of the machine; null when nothing says so.</summary>
    public static double? Scale(BoltedRing ring) => ring is { Count: > 1, PitchCircle: { Number: > 0 } pitch } ? 2 * Radius(ring) / pitch.In("mm") : null;

    /// <summary>Centre of a bolt in mm, y downward.</summary>
    public static (double X, double Y) Position(BoltedRing ring, int bolt) => At(ring, bolt, Radius(ring));

    public static string Draw(string id, BoltedRing ring, Words words)
    {
        var bolts = Enumerable.Range(1, ring.Count).ToList();
        var size = Size(ring);
        var svg = new Svg(id, size, size, words.BoltCircle, string.Join(", ", bolts.Select(Number)));
        svg.Circle(size / 2, size / 2, Radius(ring), "none", 0.5);
        svg.Polygon([(size / 2, Mark), ((size / 2) - 2.6, 0.2), ((size / 2) + 2.6, 0.2)], "#000");
        foreach (var bolt in bolts)
        {
            Bolt(svg, ring, bolt);
            foreach (var pass in Enumerable.Range(1, ring.Passes))
            {
                var (x, y) = At(ring, bolt, Radius(ring) + RoundHead + ((pass - 0.5) * BesidePass));
                svg.Circle(x, y, Pass, "#fff", 0.5).Label(x, y, Svg.Floor, Number(pass));
            }
        }
        Middle(svg, ring, words);
        return svg.Write();
    }

    private static void Bolt(Svg svg, BoltedRing ring, int bolt)
    {
        var (x, y) = Position(ring, bolt);
        if (Flats(ring) is not { } flats)
        {
            svg.Circle(x, y, Round(ring), "#fff", 0.6).Label(x, y, Svg.Floor, Number(bolt));
            return;
        }
        svg.Polygon(Enumerable.Range(0, 6).Select(i => Math.PI * i / 3).Select(a => (x + (flats / Math.Sqrt(3) * Math.Cos(a)), y + (flats / Math.Sqrt(3) * Math.Sin(a)))), "#fff", 0.6);
        var (atX, atY) = At(ring, bolt, Radius(ring) - Inward(flats));
        svg.Label(atX, atY, Svg.Floor, Number(bolt));
    }

    /// <summary>Across flats as drawn; null when not to scale, or when heads of that size would not go round.</summary>
    private static double? Flats(BoltedRing ring)
    {
        if (Scale(ring) is not { } scale || ring.AcrossFlats is not { Number: > 0 } across)
            return null;
        var drawn = across.In("mm") * scale;
        return drawn * 2 / Math.Sqrt(3) < 2 * Radius(ring) * Math.Sin(Math.PI / ring.Count) ? drawn : null;
    }

    private static double Round(BoltedRing ring) => ring.Count < 2 ? RoundHead : Math.Min(RoundHead, HeadOfPitch * 2 * Math.PI * Radius(ring) / ring.Count);

    private static void Middle(Svg svg, BoltedRing ring, Words words)
    {
        if (ring.Count < 2)
            return;
        // a box of words inside the circle that heads and numbers leave free
        var free = Radius(ring) - (Flats(ring) is { } flats ? Math.Max(Inward(flats) + 3, flats / Math.Sqrt(3)) : Round(ring));
        var (width, most) = (1.5 * free, (int)(1.3 * free / TextWidth.Leading));
        var scales = Scales(ring, words).SelectMany(l => TextWidth.Wrap(l, width)).ToList();
        var inside = ring.Inside.SelectMany(l => TextWidth.Fit(l, width, Math.Max(1, most - scales.Count - ring.Inside.Length + 1))).Take(most - scales.Count);
        List<string> lines = [.. inside, .. scales];
        var centre = Size(ring) / 2;
        svg.Lines(centre, centre - ((lines.Count - 1) / 2.0 * TextWidth.Leading), lines, Anchor.Middle);
    }

    /// <summary>A number that has no room on the head stands so far inward of it.</summary>
    private static double Inward(double flats) => flats >= NumberInHead ? 0 : (flats / Math.Sqrt(3)) + 3.2;

    private static IEnumerable<string> Scales(BoltedRing ring, Words words)
    {
        if (Scale(ring) is null)
        {
            yield return words.NotToScale;
            yield break;
        }
        yield return string.Create(CultureInfo.InvariantCulture, $"{words.PitchCircle} {ring.PitchCircle?.NumberText}\u00A0{ring.PitchCircle?.Unit.Symbol}");
        if (Flats(ring) is null)
            yield return words.HeadsNotToScale;
    }

    private static (double X, double Y) At(BoltedRing ring, int bolt, double radius)
    {
        var angle = 2 * Math.PI * (bolt - 1) / ring.Count;
        return ((Size(ring) / 2) + (radius * Math.Sin(angle)), (Size(ring) / 2) - (radius * Math.Cos(angle)));
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
