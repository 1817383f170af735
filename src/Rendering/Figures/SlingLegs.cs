using System.Globalization;
using Witnessmark.Engineering;
using Witnessmark.Engineering.Lifting;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Rendering.Figures;

/// <summary>A load on the legs of a sling.</summary>
/// <param name="Load">Its name as people say it.</param>
/// <param name="Gear">The sling's name.</param>
/// <param name="Legs">At least 1; drawn up to 4.</param>
public sealed record HungLoad(string Load, Quantity Mass, bool Weighed, string Gear, int Legs, Quantity? Rated, LegLoad Leg);

/// <summary>A load on its sling with the angle true, and what one leg carries with the worked line.</summary>
public static class SlingLegs
{
    public const double Width = 150;
    private const double Centre = 36;
    private const double Apex = 13;
    private const double Reach = 28;
    private const double Tallest = 50;
    private const double Block = 13;
    private const double Column = 78;
    private const double ColumnWidth = Width - Column - 1;
    private const double SaysTop = 9;
    private const double BetweenSays = 1.6;
    private const double Large = 6.2;
    private const double Inner = 0.6;
    private const int MostDrawn = 4;

    public static string Draw(string id, HungLoad hung, Words words)
    {
        var says = Says(hung, words).ToList();
        var spread = Spread(hung);
        var foot = Apex + spread.Height;
        var name = TextWidth.Wrap($"{hung.Load}, {Kept(hung.Mass)}", 2 * (Centre - 1));
        var told = SaysTop + says.Sum(s => (TextWidth.Wrap(s, ColumnWidth).Length * TextWidth.Leading) + BetweenSays);
        var bottom = Math.Max(foot + Block + 2 + (name.Length * TextWidth.Leading), told);
        var svg = new Svg(id, Width, bottom + 1, words.SlingOf(hung.Load), string.Join(". ", says));
        Hook(svg);
        Legs(svg, hung, spread);
        Angles(svg, hung, spread);
        svg.Rect(Centre - spread.Half - 5, foot, 2 * (spread.Half + 5), Block, svg.Hatch(), 0.7);
        svg.Lines(Centre, foot + Block + 2 + (TextWidth.Leading / 2), name, Anchor.Middle);
        Tell(svg, hung, says);
        return svg.Write();
    }

    private static (double Half, double Height) Spread(HungLoad hung)
    {
        if (hung.Legs == 1)
            return (0, Tallest * 0.8);
        var tangent = Math.Tan(ToHorizontal(hung) * Math.PI / 180);
        var half = Math.Min(Reach, Tallest / tangent);
        return (half, half < 0.5 ? Tallest : half * tangent);
    }

    private static double ToHorizontal(HungLoad hung) => 90 - (double)hung.Leg.ToVertical.Number;

    private static void Hook(Svg svg) =>
        svg.Line(Centre, 1, Centre, 5, 1.2).Circle(Centre, 8.6, 3.4, "#fff", 1.2).Circle(Centre, Apex, 0.9, "#000", 0.35);

    private static void Legs(Svg svg, HungLoad hung, (double Half, double Height) spread)
    {
        var drawn = Math.Min(hung.Legs, MostDrawn);
        for (var leg = 0; leg < drawn; leg++)
        {
            var carries = leg == 0 || leg == drawn - 1;
            var share = ((2.0 * leg / Math.Max(1, drawn - 1)) - (drawn == 1 ? 0 : 1)) * (carries ? 1 : Inner);
            svg.Line(Centre, Apex, Centre + (share * spread.Half), Apex + spread.Height, carries ? 1 : 0.4, dashed: !carries);
        }
    }

    private static void Angles(Svg svg, HungLoad hung, (double Half, double Height) spread)
    {
        if (hung.Legs == 1)
            return;
        var (flat, steep) = (ToHorizontal(hung) * Math.PI / 180, (double)hung.Leg.ToVertical.Number * Math.PI / 180);
        var foot = (X: Centre - spread.Half, Y: Apex + spread.Height);
        if (spread.Half > 8)
        {
            var radius = Math.Min(Math.Max(10, 3.6 / Math.Sin(flat / 2)), spread.Half * 0.75);
            svg.Polyline(Arc(foot, radius, -flat, 0), 0.5);
            if (spread.Height > 8)
                svg.Text(foot.X + (radius * Math.Cos(flat / 2)) + 1.4, foot.Y - Math.Max(2.6, radius * Math.Sin(flat / 2)), Degrees(ToHorizontal(hung)));
        }
        if (spread.Half < 9)
            return;
        svg.Line(Centre, Apex, Centre, foot.Y, 0.4, dashed: true);
        svg.Polyline(Arc((Centre, Apex), Math.Min(9, spread.Height * 0.6), (Math.PI / 2) - steep, Math.PI / 2), 0.5);
        var text = Degrees((double)hung.Leg.ToVertical.Number);
        var down = Math.Max(9, (TextWidth.Of(text) + 2.4) / Math.Tan(steep)) + 3;
        if (hung.Legs < MostDrawn && down < spread.Height - 3)
            svg.Text(Centre + 1.2, Apex + down, text);
    }

    // y runs downward: angles are clockwise from the right
    private static IEnumerable<(double X, double Y)> Arc((double X, double Y) about, double radius, double from, double to) =>
        Enumerable.Range(0, 13).Select(i => from + ((to - from) * i / 12)).Select(a => (about.X + (radius * Math.Cos(a)), about.Y + (radius * Math.Sin(a))));

    private static void Tell(Svg svg, HungLoad hung, IEnumerable<string> says)
    {
        svg.Text(Column, 4.5, $"{hung.Leg.Mass.Value.ToFigures(3)}", Anchor.Start, Large);
        var y = SaysTop;
        foreach (var lines in says.Select(s => TextWidth.Wrap(s, ColumnWidth)))
        {
            svg.Lines(Column, y + (TextWidth.Leading / 2), lines);
            y += (lines.Length * TextWidth.Leading) + BetweenSays;
        }
    }

    private static IEnumerable<string> Says(HungLoad hung, Words words)
    {
        yield return $"{(hung.Legs == 1 ? words.InTheLeg : words.InEachLeg)} ({Kept(hung.Leg.Force.Value.ToFigures(3))})";
        if (hung.Legs > 1)
        {
            yield return hung.Leg.Mass.Line;
            yield return $"{Degrees(ToHorizontal(hung))} {words.ToTheHorizontal}";
            yield return $"{Degrees((double)hung.Leg.ToVertical.Number)} {words.ToTheVertical}";
        }
        var legs = hung.Legs == 1 ? words.OneLeg : string.Create(CultureInfo.InvariantCulture, $"{hung.Legs} {words.Legs}");
        yield return $"{hung.Gear}: {legs}{(hung.Rated is { } rated ? $", {words.Rated} {Kept(rated)}" : "")}";
        if (hung.Legs > hung.Leg.Carrying)
            yield return $"{legs} {words.CountAsTwo}";
        if (!hung.Weighed)
            yield return $"{hung.Load}: {words.NotWeighed}";
    }

    // number and unit stay on one line
    private static string Kept(Quantity quantity) => quantity.ToString().Replace(' ', '\u00A0');

    private static string Degrees(double angle) => string.Create(CultureInfo.InvariantCulture, $"{angle:0.#}°");
}
