using System.Globalization;
using System.Xml.Linq;
using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Tests.Figures;

/// <summary>What a drawing consists of, measured: every shape and every text with the box it fills.</summary>
internal sealed class Sketch
{
    private static readonly string[] Shapes = ["rect", "circle", "polyline", "polygon", "text"];
    private readonly XElement _root;

    public Sketch(string svg)
    {
        _root = XDocument.Parse(svg).Root!;
        var view = _root.Attribute("viewBox")!.Value.Split(' ').Select(Number).ToList();
        View = new Box(view[0], view[1], view[2], view[3], "the drawing");
        All = [.. _root.Elements().Where(e => Shapes.Contains(e.Name.LocalName)).Select(BoxOf)];
        Texts = [.. _root.Elements().Where(e => e.Name.LocalName == "text").Select(BoxOf)];
    }

    public Box View { get; }

    public IReadOnlyList<Box> All { get; }

    public IReadOnlyList<Box> Texts { get; }

    public IEnumerable<XElement> Elements => _root.DescendantsAndSelf();

    public IEnumerable<XElement> Named(string name) => _root.Elements().Where(e => e.Name.LocalName == name);

    public IEnumerable<Box> Boxes(string name) => Named(name).Select(BoxOf);

    private static Box BoxOf(XElement e) => e.Name.LocalName switch
    {
        "rect" => new(At(e, "x"), At(e, "y"), At(e, "width"), At(e, "height"), $"{e}"),
        "circle" => new(At(e, "cx") - At(e, "r"), At(e, "cy") - At(e, "r"), 2 * At(e, "r"), 2 * At(e, "r"), $"{e}"),
        "text" => TextBox(e),
        _ => Around([.. e.Attribute("points")!.Value.Split(' ').Select(p => p.Split(',').Select(Number).ToArray())], $"{e}"),
    };

    private static Box TextBox(XElement e)
    {
        var size = At(e, "font-size");
        var width = TextWidth.Of(e.Value, size);
        // read upward: from the foot of its first letter
        if (e.Attribute("transform") is not null)
            return new(At(e, "x") - (0.73 * size), At(e, "y") - width, 0.94 * size, width, e.Value);
        var left = At(e, "x") - (e.Attribute("text-anchor")?.Value switch { "middle" => width / 2, "end" => width, _ => 0 });
        // from the top of a capital to below the line
        return new(left, At(e, "y") - (0.73 * size), width, 0.94 * size, e.Value);
    }

    private static Box Around(double[][] points, string what)
    {
        var (left, top) = (points.Min(p => p[0]), points.Min(p => p[1]));
        return new(left, top, points.Max(p => p[0]) - left, points.Max(p => p[1]) - top, what);
    }

    private static double At(XElement e, string name) => Number(e.Attribute(name)!.Value);

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}

internal sealed record Box(double X, double Y, double Width, double Height, string What)
{
    public double Right => X + Width;

    public double Bottom => Y + Height;

    public bool Inside(Box other) => X >= other.X && Y >= other.Y && Right <= other.Right && Bottom <= other.Bottom;

    public bool Overlaps(Box other) => X < other.Right && other.X < Right && Y < other.Bottom && other.Y < Bottom;
}
