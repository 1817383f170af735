using System.Collections.Immutable;
using System.Globalization;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Rendering.Figures;

/// <param name="Hours">On the machine's counter.</param>
public sealed record WearPoint(decimal Hours, Quantity Reading);

/// <summary>Readings of one thing over machine hours.</summary>
/// <param name="Points">At least one, all in units of the limit's kind.</param>
/// <param name="WornAbove">True when more than the limit is worn out, false when less is.</param>
public sealed record WearReadings(string What, ImmutableArray<WearPoint> Points, Quantity Limit, bool WornAbove);

/// <summary>
/// Readings over hours with the limit as a line across. The line between points ends at the last one: it foretells nothing.
/// A reading beyond the limit is a square, every other one a round point.
/// </summary>
public static class WearTrend
{
    public const double Width = 160;
    private const double Left = 24;
    private const double Right = 112;
    private const double Top = 9;
    private const double Bottom = 63;
    private const double Column = 122;
    private const double Margin = 0.08;
    private const int MostTicks = 5;

    public static string Draw(string id, WearReadings wear, Words words)
    {
        var note = TextWidth.Wrap(words.ForetellsNothing, Width - 2);
        var last = wear.Points[^1];
        var (over, across) = (Values(wear), Hours(wear));
        (double At, string Text)[] beside = [(Y(wear.Limit, wear, over), $"{words.Limit} {wear.Limit}"), (Y(last.Reading, wear, over), $"{last.Reading}, {last.Hours.ToString(CultureInfo.InvariantCulture)} h")];
        var labels = SideLabels.Spread(beside.OrderBy(b => b.At), Width - Column - 1, 1, Bottom);
        var text = Bottom + 14;
        var svg = new Svg(id, Width, text + (note.Length * TextWidth.Leading), $"{words.WearOf} {wear.What}", string.Join("; ", wear.Points.Select(p => $"{p.Hours.ToString(CultureInfo.InvariantCulture)} h: {p.Reading}").Append($"{words.Limit} {wear.Limit}")));
        Axes(svg, wear, over, across, words);
        svg.Line(Left, beside[0].At, Right, beside[0].At, 0.9, dashed: true);
        svg.Polyline(wear.Points.Select(p => (X(p, across), Y(p.Reading, wear, over))), 0.5);
        foreach (var point in wear.Points)
            Point(svg, X(point, across), Y(point.Reading, wear, over), Beyond(point.Reading, wear));
        labels.Draw(svg, Right + 0.5, Column);
        return svg.Lines(1, text + (TextWidth.Leading / 2) - 1, note).Write();
    }

    public static bool Beyond(Quantity reading, WearReadings wear) =>
        wear.WornAbove ? reading.CompareTo(wear.Limit) > 0 : reading.CompareTo(wear.Limit) < 0;

    private static void Point(Svg svg, double x, double y, bool beyond)
    {
        if (beyond)
            svg.Rect(x - 1.5, y - 1.5, 3, 3, "#fff", 0.9);
        else
            svg.Circle(x, y, 1.3, "#000", 0.35);
    }

    private static void Axes(Svg svg, WearReadings wear, (double Low, double High) over, (double Low, double High) across, Words words)
    {
        svg.Polyline([(Left, Top), (Left, Bottom), (Right, Bottom)], 0.5);
        var step = Ticks.Step(over.Low, over.High, MostTicks);
        foreach (var value in Ticks.Between(over.Low, over.High, step))
        {
            var y = Height(value, over);
            svg.Line(Left - 1.5, y, Left, y, 0.5).Text(Left - 2.5, y, Number(value, step), Anchor.End);
        }
        var hours = Ticks.Step(across.Low, across.High, MostTicks);
        foreach (var hour in Ticks.Between(across.Low, across.High, hours))
        {
            var x = Left + ((hour - across.Low) / (across.High - across.Low) * (Right - Left));
            svg.Line(x, Bottom, x, Bottom + 1.5, 0.5).Label(x, Bottom + 4.6, Svg.Floor, Number(hour, hours));
        }
        svg.Text(1, 3, $"{TextWidth.Fit(wear.What, Column - 20)}, {wear.Limit.Unit}");
        svg.Label((Left + Right) / 2, Bottom + 9.6, Svg.Floor, words.HoursOfMachine);
    }

    private static (double Low, double High) Values(WearReadings wear)
    {
        var all = wear.Points.Select(p => Value(p.Reading, wear)).Append(Value(wear.Limit, wear)).ToList();
        return Widened(all.Min(), all.Max());
    }

    private static (double Low, double High) Hours(WearReadings wear) => Widened(wear.Points.Min(p => (double)p.Hours), wear.Points.Max(p => (double)p.Hours));

    private static (double Low, double High) Widened(double low, double high)
    {
        var more = high > low ? (high - low) * Margin : Math.Max(Math.Abs(high) * Margin, 0.01);
        return (low - more, high + more);
    }

    private static double X(WearPoint point, (double Low, double High) across) => Left + (((double)point.Hours - across.Low) / (across.High - across.Low) * (Right - Left));

    private static double Y(Quantity reading, WearReadings wear, (double Low, double High) over) => Height(Value(reading, wear), over);

    private static double Height(double value, (double Low, double High) over) => Bottom - ((value - over.Low) / (over.High - over.Low) * (Bottom - Top));

    private static double Value(Quantity reading, WearReadings wear) => (double)reading.In(wear.Limit.Unit).Number;

    // as many decimals as the step needs
    private static string Number(double value, double step) => value.ToString($"F{Math.Max(0, (int)-Math.Floor(Math.Log10(step) + 1e-9))}", CultureInfo.InvariantCulture);
}
