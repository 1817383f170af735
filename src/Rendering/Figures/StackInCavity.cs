using System.Collections.Immutable;
using System.Globalization;

namespace Witnessmark.Rendering.Figures;

/// <param name="Label">As on ladder and drawing: D1.</param>
/// <param name="Thickness">mm; null: drawn as thick as the mean of the others.</param>
/// <param name="Outer">Teeth outside; without lining but for the faced side. Otherwise lined on both sides.</param>
/// <param name="FacedTo">The end that the one faced side looks at, in words; null when there is none.</param>
/// <param name="FacedUp">Whether that end is the one drawn at the top.</param>
public sealed record StackedPart(string Label, string Name, decimal? Thickness, bool Outer, string? FacedTo, bool FacedUp);

/// <summary>A stack of parts closed in its cavity.</summary>
/// <param name="From">The end that building starts from, drawn at the top.</param>
/// <param name="Clearance">Accepted, in words; null when none is written.</param>
/// <param name="Gap">Nominal clearance in mm; null: drawn without scale.</param>
public sealed record ClosedStack(string From, string To, ImmutableArray<StackedPart> Parts, string? Clearance, decimal? Gap);

/// <summary>
/// Section through a stack as it stands when it is closed: every part in building order and to one scale, the clearance left
/// open at the far end, and beside each its place, name, thickness and where its facing looks. Steel is plain, lining hatched.
/// </summary>
public static class StackInCavity
{
    public const double Width = 150;
    private const double Wall = 3;
    private const double Left = 4.5;
    private const double Right = 52;
    private const double Reach = 6;
    private const double Column = 63;
    private const double ColumnWidth = Width - Column - 1;
    private const double End = 7;
    private const double Thinnest = 1.8;
    private const double Tallest = 150;
    private const double NoScale = 4;
    private const double Lining = 0.32;

    /// <summary>mm drawn for 1 mm of part.</summary>
    public static double Scale(ClosedStack stack, Words words)
    {
        var sum = stack.Parts.Sum(p => Thick(p, stack)) + Math.Max(0, (double)(stack.Gap ?? 0));
        var thinnest = stack.Parts.Select(p => Thick(p, stack)).DefaultIfEmpty(1).Min();
        var wanted = Math.Max(SideLabels.HeightOf(Says(stack, words), ColumnWidth) / Math.Max(sum, 1e-6), Thinnest / thinnest);
        return Math.Min(wanted, Tallest / Math.Max(sum, 1e-6));
    }

    public static string Draw(string id, ClosedStack stack, Words words)
    {
        var scale = Scale(stack, words);
        var places = Places(stack, scale);
        var gapFrom = places.IsEmpty ? End : places[^1].Bottom;
        var gap = stack.Gap is { } nominal ? Math.Max(0, (double)nominal * scale) : NoScale;
        var ats = places.Select(p => (p.Top + p.Bottom) / 2).Append(gapFrom + (gap / 2));
        var labels = SideLabels.Spread(ats.Zip(Says(stack, words)), ColumnWidth, 1, gapFrom + gap + End);
        var height = Math.Max(gapFrom + gap + End, labels.Bottom) + 1;
        var svg = new Svg(id, Width, height, $"{words.SectionOfStack}: {stack.From} – {stack.To}", string.Join(". ", Says(stack, words)));
        var hatch = svg.Hatch();
        svg.Rect(0.5, 0.5, Wall, gapFrom + gap + End - 0.5, hatch, 0.5);
        Bar(svg, 0.5, stack.From);
        foreach (var (part, top, bottom) in places)
            One(svg, part, top, bottom - top, hatch);
        Bar(svg, gapFrom + gap, stack.To);
        labels.Draw(svg, Right, Column, [.. stack.Parts.Select(p => (p.Outer ? Right - Reach : Right) + 0.5), Right - Reach]);
        return svg.Write();
    }

    private static void Bar(Svg svg, double y, string end) =>
        svg.Rect(Wall + 0.5, y, Right - Wall - 0.5, End - 0.5, "#000").Label((Wall + Right) / 2, y + ((End - 0.5) / 2), Svg.Floor, TextWidth.Fit(end, Right - Wall - 3), "#fff");

    private static ImmutableArray<(StackedPart Part, double Top, double Bottom)> Places(ClosedStack stack, double scale)
    {
        var places = ImmutableArray.CreateBuilder<(StackedPart, double, double)>();
        var y = End;
        foreach (var part in stack.Parts)
            places.Add((part, y, y += Thick(part, stack) * scale));
        return places.ToImmutable();
    }

    private static void One(Svg svg, StackedPart part, double y, double h, string hatch)
    {
        var (x, w) = part.Outer ? (Left, Right - Reach - Left) : (Left + Reach, Right - Reach - Left);
        svg.Rect(x, y, w, h, part.Outer ? "#fff" : hatch, 0.5);
        if (!part.Outer)
            svg.Rect(x, y + (h * Lining), w, h * (1 - (2 * Lining)), "#fff", 0.35);
        else if (part.FacedTo is not null)
            svg.Rect(x, part.FacedUp ? y : y + (h * 2 / 3), w, h / 3, hatch, 0.35);
    }

    private static IEnumerable<string> Says(ClosedStack stack, Words words)
    {
        var parts = stack.Parts.Select((p, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1} · {p.Label} {p.Name}{Thickness(p)}{Facing(p, words)}"));
        return stack.Clearance is { } clearance ? parts.Append($"{words.Clearance} {clearance}") : parts;
    }

    private static string Thickness(StackedPart part) => part.Thickness is { } mm ? string.Create(CultureInfo.InvariantCulture, $" {mm}\u00A0mm") : "";

    private static string Facing(StackedPart part, Words words) => part.FacedTo is { } end ? $", {words.FacingTo} {end}" : "";

    private static double Thick(StackedPart part, ClosedStack stack)
    {
        if (part.Thickness is { } mm and > 0)
            return (double)mm;
        var known = stack.Parts.Select(p => p.Thickness).OfType<decimal>().Where(t => t > 0).ToList();
        return known.Count == 0 ? 1 : (double)known.Average();
    }
}
