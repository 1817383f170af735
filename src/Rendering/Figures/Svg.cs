using System.Globalization;
using System.Text;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Figures;

/// <summary>A drawing in millimetres, black on white, with a title and a description for those who do not see it.</summary>
internal sealed class Svg(string id, double width, double height, string title, string description)
{
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

    public Svg Path(string data, string fill)
    {
        _body.Append(CultureInfo.InvariantCulture, $"<path d=\"{data}\" fill=\"{fill}\"/>");
        return this;
    }

    /// <summary>Bold text centred on a point. <paramref name="size"/> in mm: 11 pt is 3.9.</summary>
    public Svg Label(double x, double y, double size, string text, string fill = "#000")
    {
        _body.Append(CultureInfo.InvariantCulture,
            $"<text x=\"{N(x)}\" y=\"{N(y + (size * 0.36))}\" font-size=\"{N(size)}\" font-weight=\"700\" text-anchor=\"middle\" fill=\"{fill}\">{Escape.Text(text)}</text>");
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
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{N(width)}mm\" height=\"{N(height)}mm\" viewBox=\"0 0 {N(width)} {N(height)}\" role=\"img\" aria-labelledby=\"{id}-t {id}-d\"><title id=\"{id}-t\">{Escape.Text(title)}</title><desc id=\"{id}-d\">{Escape.Text(description)}</desc>{_body}</svg>");

    public static string N(double mm) => mm.ToString("0.###", CultureInfo.InvariantCulture);

    private static string Line(double stroke) => stroke > 0 ? $" stroke=\"#000\" stroke-width=\"{N(stroke)}\"" : "";
}
