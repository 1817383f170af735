using System.Globalization;
using Witnessmark.Engineering;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Rendering.Figures;

/// <summary>A torque wrench with an adapter, set for a bolt.</summary>
/// <param name="Length">Centre of drive to centre of grip.</param>
/// <param name="Extension">Centre of drive to centre of jaw.</param>
/// <param name="Degrees">0 in line, 90 across, 180 folded back.</param>
/// <param name="Division">One division of the scale.</param>
/// <param name="Dial">What is dialled: a mark of the scale.</param>
/// <param name="Setting">What would have to be dialled, worked out.</param>
/// <param name="Bolt">What the bolt gets with that dial.</param>
public sealed record AdaptedWrench(
    string Wrench, string Adapter, Quantity Length, Quantity Extension, double Degrees, QuantityRange Scale, Quantity Division, Quantity Dial, Worked<Quantity> Setting, Quantity Bolt);

/// <summary>Wrench and adapter from above with L and E, the setting on the scale, and the worked line.</summary>
public static class AdapterOnWrench
{
    public const double Width = 170;
    private const double Arm = 146;
    private const double Edge = 10;
    private const double ShortestDrawn = 9;
    private const double ScaleLeft = 8;
    private const double ScaleRight = Width - 8;
    private const int MostDivisions = 80;
    private const int MostNumbers = 8;

    public static string Draw(string id, AdaptedWrench set, Words words)
    {
        var text = TextWidth.Wrap(set.Setting.Line, Width - 2);
        var (l, e) = Drawn(set);
        var bolt = (X: -e * Cos(set), Y: -e * Math.Sin(set.Degrees * Math.PI / 180));
        // the drive stands so far right that the adapter ends on the paper
        var drive = (X: Edge + Math.Max(0, -bolt.X), Y: 17 - bolt.Y);
        var scale = drive.Y + 37;
        var height = scale + 13 + (text.Length * TextWidth.Leading);
        var says = $"L {set.Length}, E {set.Extension}, {Angle(set)}, {words.Dial} {set.Dial}, {words.BoltGets} {set.Bolt}";
        var svg = new Svg(id, Width, height, $"{set.Wrench} {words.Adapter} {set.Adapter}", $"{says}. {set.Setting.Line}");
        svg.Text(1, 3, TextWidth.Fit($"{Angle(set)}, {set.Wrench} {words.Adapter} {set.Adapter}", Width - 2));
        Tools(svg, drive, (drive.X + bolt.X, drive.Y + bolt.Y), l);
        Lengths(svg, set, drive, drive.X + bolt.X, l);
        Scale(svg, set, scale, words);
        return svg.Lines(1, scale + 13, text).Write();
    }

    private static (double L, double E) Drawn(AdaptedWrench set)
    {
        var (l, e) = ((double)set.Length.In(UnitTable.Get("mm")).Number, (double)set.Extension.In(UnitTable.Get("mm")).Number);
        var ahead = Math.Max(0, Cos(set));
        var scale = (Arm - 4) / (l + (e * ahead));
        return e * scale >= ShortestDrawn ? (l * scale, e * scale) : (Arm - 4 - (ShortestDrawn * ahead), ShortestDrawn);
    }

    private static void Tools(Svg svg, (double X, double Y) drive, (double X, double Y) bolt, double l)
    {
        svg.Line(drive.X, drive.Y, bolt.X, bolt.Y, 3).Line(drive.X, drive.Y, drive.X + l, drive.Y, 1.6);
        svg.Rect(drive.X + l - 9, drive.Y - 2.4, 18, 4.8, svg.Hatch(), 0.5).Circle(drive.X + l, drive.Y, 0.9, "#000", 0.35);
        svg.Rect(drive.X - 2.6, drive.Y - 2.6, 5.2, 5.2, "#fff", 0.7);
        svg.Circle(bolt.X, bolt.Y, 4.4, "#fff", 0.9).Polygon(Enumerable.Range(0, 6).Select(i => Math.PI * i / 3).Select(a => (bolt.X + (2.6 * Math.Cos(a)), bolt.Y + (2.6 * Math.Sin(a)))), "#fff", 0.5);
    }

    private static void Lengths(Svg svg, AdaptedWrench set, (double X, double Y) drive, double bolt, double l)
    {
        Length(svg, drive.X, drive.X + l, drive.Y + 9, $"L {set.Length}");
        var says = set.Degrees == 0 ? $"E {set.Extension}" : $"E {set.Extension}, × cos {Angle(set)}";
        Length(svg, Math.Min(drive.X, bolt), Math.Max(drive.X, bolt), drive.Y + 16, says);
    }

    private static void Length(Svg svg, double from, double to, double y, string says)
    {
        svg.Line(from, y, to, y, 0.5).Line(from, y - 2, from, y + 2, 0.5).Line(to, y - 2, to, y + 2, 0.5);
        // a short length has its words beside it
        var beside = TextWidth.Of(says) + 4 > to - from;
        if (beside)
            svg.Text(to + 2, y, says);
        else
            svg.Text((from + to) / 2, y - 3, says, Anchor.Middle);
    }

    private static void Scale(Svg svg, AdaptedWrench set, double y, Words words)
    {
        if (set.Scale is not { Low.Value: var low, High.Value: var high })
            return;
        var unit = set.Dial.Unit;
        var (from, to) = ((double)low.In(unit).Number, (double)high.In(unit).Number);
        svg.Line(ScaleLeft, y, ScaleRight, y, 0.7);
        var division = (double)set.Division.In(unit).Number;
        if ((to - from) / division <= MostDivisions)
            foreach (var i in Enumerable.Range(0, (int)Math.Floor(((to - from) / division) + 1e-6) + 1))
                svg.Line(Along(from + (i * division), from, to), y, Along(from + (i * division), from, to), y + 1.6, 0.35);
        foreach (var number in Ticks.Between(from, to, Ticks.Step(from, to, MostNumbers)))
            svg.Line(Along(number, from, to), y, Along(number, from, to), y + 2.6, 0.6).Label(Along(number, from, to), y + 5.4, Svg.Floor, number.ToString("0.##", CultureInfo.InvariantCulture));
        var dial = (double)set.Dial.Number;
        var says = $"{words.Dial} {set.Dial}, {words.BoltGets} {set.Bolt}";
        if (dial < from || dial > to)
        {
            svg.Text(ScaleLeft, y - 6, $"{words.Dial} {set.Dial}: {words.OffTheScale}");
            return;
        }
        var (x, half) = (Along(dial, from, to), TextWidth.Of(says) / 2);
        svg.Polygon([(x, y - 0.4), (x - 2, y - 4.4), (x + 2, y - 4.4)], "#000");
        svg.Text(Math.Clamp(x, 1 + half, Width - 1 - half), y - 7.4, says, Anchor.Middle);
    }

    private static double Along(double value, double from, double to) => ScaleLeft + ((value - from) / (to - from) * (ScaleRight - ScaleLeft));

    private static double Cos(AdaptedWrench set) => Math.Round(Math.Cos(set.Degrees * Math.PI / 180), 9);

    private static string Angle(AdaptedWrench set) => string.Create(CultureInfo.InvariantCulture, $"{set.Degrees:0.#}°");
}
