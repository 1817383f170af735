using System.Globalization;
using System.Text;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Figures;

/// <summary>Where a text stands: from, about or up to its x.</summary>
internal enum Anchor
{
    Start,
    Middle,
    End,
}

/// <summary>A drawing in millimetres, black on white, with a title and a description for those who do not see it.</summary>
internal sealed class Svg(string id, double width, double height, string title, string description)
{
    /// <summary>11 pt in mm: nothing is printed smaller.</summary>
    public const double Floor = 3.9;

    /// <summary>Half the height of a capital: a text is centred on its y.</summary>
    private const double HalfCapital = 0.36;

    private readonly StringBuilder _body = new();

    public Svg Rect(double x, double y, double w, double h, string fill, double stroke = 0)
    {
        _body.Append(CultureInfo.InvariantCulture, $"<rect x=\"{N(x)}\" y=\"{N(y)}\" width=\"{N(w)}\" height=\"{N(h)}\" fill=\"{fill}\"{Line(stroke)}/>");
        return this;
    }

    public Svg Circle(double x, double y, double r, string fill, double stroke)
    {
        _body.Append(CultureInfo.InvariantCulture, $"<circle cx=\"{N(x)}\" cy=\"{N(y)}\" r=\"{N(r)}\" fill=\"{fill}\"{Line(stroke)}/>");
        return this;
    }

    public Svg Line(double x1, double y1, double x2, double y2, double stroke, bool dashed = false) =>
        Polyline([(x1, y1), (x2, y2)], stroke, dashed);

    public Svg Polyline(IEnumerable<(double X, double Y)> points, double stroke, bool dashed = false)
    {
        var dashes = dashed ? $" stroke-dasharray=\"{N(stroke * 4)} {N(stroke * 3)}\"" : "";
        _body.Append(CultureInfo.InvariantCulture, $"<polyline points=\"{Points(points)}\" fill=\"none\"{Line(stroke)}{dashes}/>");
        return this;
    }

    public Svg Polygon(IEnumerable<(double X, double Y)> points, string fill, double stroke = 0)
    {
        _body.Append(CultureInfo.InvariantCulture, $"<polygon points=\"{Points(points)}\" fill=\"{fill}\"{Line(stroke)}/>");
        return this;
    }

    public Svg Path(string data, string fill)
    {
        _body.Append(CultureInfo.InvariantCulture, $"<path d=\"{data}\" fill=\"{fill}\"/>");
        return this;
    }

    /// <summary>Bold text centred on a point. <paramref name="size"/> in mm: 11 pt is 3.9.</summary>
    public Svg Label(double x, double y, double size, string text, string fill = "#000") => Text(x, y, text, Anchor.Middle, size, fill);

    /// <summary>Bold text, centred on its y.</summary>
    public Svg Text(double x, double y, string text, Anchor anchor = Anchor.Start, double size = Floor, string fill = "#000")
    {
        var at = anchor switch { Anchor.Middle => " text-anchor=\"middle\"", Anchor.End => " text-anchor=\"end\"", _ => "" };
        _body.Append(CultureInfo.InvariantCulture,
            $"<text x=\"{N(x)}\" y=\"{N(y + (size * HalfCapital))}\" font-size=\"{N(size)}\" font-weight=\"700\"{at} fill=\"{fill}\">{Escape.Text(text)}</text>");
        return this;
    }

    /// <summary>Bold text that reads upward from its place.</summary>
    public Svg Upright(double x, double y, string text)
    {
        _body.Append(CultureInfo.InvariantCulture,
            $"<text x=\"{N(x + (Floor * HalfCapital))}\" y=\"{N(y)}\" transform=\"rotate(-90 {N(x + (Floor * HalfCapital))} {N(y)})\" font-size=\"{N(Floor)}\" font-weight=\"700\" fill=\"#000\">{Escape.Text(text)}</text>");
        return this;
    }

    /// <summary>Lines of text below each other, the first centred on <paramref name="y"/>.</summary>
    public Svg Lines(double x, double y, IEnumerable<string> lines, Anchor anchor = Anchor.Start, string fill = "#000")
    {
        foreach (var line in lines)
        {
            Text(x, y, line, anchor, Floor, fill);
            y += TextWidth.Leading;
        }
        return this;
    }

    /// <summary>Slanting lines to fill with: reads in black and white, unlike a colour.</summary>
    public string Hatch()
    {
        _body.Append(CultureInfo.InvariantCulture,
            $"<defs><pattern id=\"{id}-hatch\" width=\"1.7\" height=\"1.7\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"><rect width=\"1.7\" height=\"1.7\" fill=\"#fff\"/><rect width=\".8\" height=\"1.7\" fill=\"#000\"/></pattern></defs>");
        return $"url(#{id}-hatch)";
    }

    public string Write() => string.Create(CultureInfo.InvariantCulture,
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{N(width)}mm\" height=\"{N(height)}mm\" viewBox=\"0 0 {N(width)} {N(height)}\" font-family=\"Liberation Sans, Arial, Helvetica, sans-serif\" role=\"img\" aria-labelledby=\"{id}-t {id}-d\"><title id=\"{id}-t\">{Escape.Text(title)}</title><desc id=\"{id}-d\">{Escape.Text(description)}</desc>{_body}</svg>");

    public static string N(double mm) => mm.ToString("0.###", CultureInfo.InvariantCulture);

    private static string Points(IEnumerable<(double X, double Y)> points) => string.Join(' ', points.Select(p => $"{N(p.X)},{N(p.Y)}"));

    private static string Line(double stroke) => stroke > 0 ? $" stroke=\"#000\" stroke-width=\"{N(stroke)}\"" : "";
}
