using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Graphics;

namespace Witnessmark.Press.Tests.Proof;

/// <param name="Place">From the baseline to the height of a capital.</param>
internal readonly record struct Sign(char Value, double Size, Area Place);

/// <summary>Signs of one line that stand together.</summary>
internal readonly record struct Run(string Text, Area Place);

/// <summary>One page as it was printed: what stands in the margins, what between them, in the order in which the page draws it.</summary>
internal sealed class PrintedPage
{
    private const double CapHeight = 0.7;
    private const double LeastBoxEdge = 7.4 * Area.Millimetre; // 8 mm less the line itself
    private const double LeastHole = 5 * Area.Millimetre; // for a punch of 6 mm
    private const double White = 0.99;

    private PrintedPage(int number, Area inner, Area paper) => (Number, Inner, Paper) = (number, inner, paper);

    public int Number { get; }

    /// <summary>Between the margins.</summary>
    public Area Inner { get; }

    public Area Paper { get; }

    public List<Sign> Signs { get; } = [];

    /// <summary>What stands between the margins, without blanks, in capitals: some capitals are made by the style sheet.</summary>
    public string Text { get; private set; } = "";

    /// <summary>What stands in the margins.</summary>
    public List<Sign> Marginal { get; } = [];

    public string Head { get; private set; } = "";

    public string Foot { get; private set; } = "";

    public List<Run> Runs { get; private set; } = [];

    /// <summary>Frames large enough to write in or to strike.</summary>
    public List<Area> Frames { get; } = [];

    /// <summary>Everything drawn between the margins that is not white.</summary>
    public List<Area> Drawn { get; } = [];

    /// <summary>Around what stands in the head.</summary>
    public List<Area> HeadFrames { get; } = [];

    /// <summary>Circles to punch, in the left margin.</summary>
    public List<Area> Holes { get; } = [];

    /// <summary>Black rectangles where the code belongs.</summary>
    public List<Area> Code { get; } = [];

    public static PrintedPage Read(Page page, PlannedPrint print)
    {
        var paper = new Area(0, 0, page.Width, page.Height);
        var read = new PrintedPage(page.Number, print.Inner(paper), paper);
        read.Letters(page);
        foreach (var path in page.Paths)
            read.Path(path, print.CodePlace(paper));
        return read;
    }

    /// <summary>What stands in an area, in the order in which the page draws it.</summary>
    public string Within(Area area) => Said([.. Signs.Where(s => area.Holds(s.Place, 0.1))]);

    private void Letters(Page page)
    {
        var (head, foot) = (new List<Sign>(), new List<Sign>());
        foreach (var letter in page.Letters)
            foreach (var value in letter.Value.Where(c => !char.IsWhiteSpace(c)))
            {
                var (from, to) = (letter.StartBaseLine, letter.EndBaseLine);
                var sign = new Sign(char.ToUpperInvariant(value), letter.PointSize, new Area(from.X, from.Y, Math.Max(to.X, from.X + 0.5), from.Y + (CapHeight * letter.PointSize)));
                (from.Y > Inner.Top ? head : from.Y < Inner.Bottom - 1 ? foot : Signs).Add(sign);
            }
        (Text, Head, Foot) = (Said(Signs), Said(head), Said(foot));
        Marginal.AddRange([.. head, .. foot]);
        Runs = [.. Together(Signs)];
    }

    private void Path(PdfPath path, Area code)
    {
        if (path.GetBoundingRectangle() is not { } b || !(path.IsStroked || path.IsFilled) || (path.IsFilled && !path.IsStroked && IsWhite(path)))
            return;
        var place = new Area(b.Left, b.Bottom, b.Right, b.Top);
        if (path.IsFilled && code.Holds(place, 1))
            Code.AddRange(path.Select(p => p.GetBoundingRectangle()).OfType<UglyToad.PdfPig.Core.PdfRectangle>().Select(r => new Area(r.Left, r.Bottom, r.Right, r.Top)));
        else if (place.Right < Inner.Left && place is { Height: > LeastHole, Width: > LeastHole })
            Holes.Add(place);
        else if (place.Bottom > Inner.Top)
            HeadFrames.Add(place);
        else if (!Holes.Any(h => h.Holds(place, 0)))
        {
            Drawn.Add(place);
            if (path is { IsStroked: true, IsFilled: false, Count: 1 } && path[0].IsDrawnAsRectangle && place.Height >= LeastBoxEdge && place.Width >= LeastBoxEdge)
                Frames.Add(place);
        }
    }

    private static bool IsWhite(PdfPath path)
    {
        if (path.FillColor is null or UglyToad.PdfPig.Graphics.Colors.PatternColor)
            return false;
        var (r, g, b) = path.FillColor.ToRGBValues();
        return r > White && g > White && b > White;
    }

    private static string Said(List<Sign> signs) => string.Create(signs.Count, signs, (text, all) =>
    {
        for (var i = 0; i < all.Count; i++)
            text[i] = all[i].Value;
    });

    private static IEnumerable<Run> Together(List<Sign> signs)
    {
        for (var start = 0; start < signs.Count;)
        {
            var end = start + 1;
            while (end < signs.Count && Follows(signs[end - 1], signs[end]))
                end++;
            var all = signs.GetRange(start, end - start);
            yield return new Run(Said(all), all.Select(s => s.Place).Aggregate((a, b) => a.With(b)));
            start = end;
        }
    }

    private static bool Follows(Sign before, Sign after) =>
        Math.Abs(before.Place.Bottom - after.Place.Bottom) < 0.6 && after.Place.Left > before.Place.Left
        && after.Place.Left - before.Place.Right < 0.6 * after.Size;
}
