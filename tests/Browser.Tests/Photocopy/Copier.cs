namespace Witnessmark.Browser.Tests.Photocopy;

/// <summary>
/// An office copier that nobody has cleaned: it sees grey, not quite sharp, the page a little askew and a little smaller, with
/// noise and dust, and prints black or white. Figures: common practice, no source.
/// </summary>
/// <param name="Name">For pictures and messages.</param>
/// <param name="Threshold">What is darker than this prints black: a lean copy loses thin strokes, a fat one closes counters.</param>
public sealed record Copier(string Name, int Threshold)
{
    public const double BlurMillimetres = 0.1;
    public const double TiltDegrees = 0.7;
    public const double Scale = 0.98;
    private const double Noise = 14;
    private const int NoiseKinds = 4096;
    private const int DustPerPage = 40;
    private const double DustMillimetres = 0.15;

    public static readonly Copier Lean = new("lean", 104);
    public static readonly Copier Fat = new("fat", 168);

    /// <summary>The copy of a copy.</summary>
    public Copied Twice(Raster page, int seed)
    {
        var first = Once(page, seed);
        var second = Once(first.Page, seed + 1);
        return new Copied(second.Page, first.Way.Then(second.Way));
    }

    public Copied Once(Raster page, int seed)
    {
        var chance = new Random(seed);
        var seen = page.Blurred(BlurMillimetres * Raster.PerMillimetre);
        var way = Way.About(page.Width / 2.0, page.Height / 2.0, TiltDegrees, Scale);
        var back = way.Back();
        var copy = new byte[page.Width * page.Height];
        // a table of chances: drawing one for each pixel takes longer than everything else
        var noise = Enumerable.Range(0, NoiseKinds).Select(_ => Noise * Gauss(chance)).ToArray();
        for (var y = 0; y < page.Height; y++)
            for (var x = 0; x < page.Width; x++)
            {
                var (sx, sy) = back.Of(x, y);
                copy[(y * page.Width) + x] = seen.At(sx, sy) + noise[chance.Next(NoiseKinds)] < Threshold ? (byte)0 : (byte)255;
            }
        Dust(copy, page.Width, page.Height, chance);
        return new Copied(new Raster(page.Width, page.Height, copy), way);
    }

    private static void Dust(byte[] copy, int width, int height, Random chance)
    {
        var reach = (int)Math.Round(DustMillimetres * Raster.PerMillimetre);
        for (var speck = 0; speck < DustPerPage; speck++)
        {
            var (x, y) = (chance.Next(reach, width - reach), chance.Next(reach, height - reach));
            for (var dy = -reach; dy <= reach; dy++)
                for (var dx = -reach; dx <= reach; dx++)
                    if ((dx * dx) + (dy * dy) <= reach * reach)
                        copy[((y + dy) * width) + x + dx] = 0;
        }
    }

    // Box and Muller
    private static double Gauss(Random chance) => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}

/// <summary>Where a point of the page lies on the copy.</summary>
public readonly record struct Way(double A, double B, double C, double D, double E, double F)
{
    public static Way About(double x, double y, double degrees, double scale)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        var (a, b) = (scale * cos, scale * sin);
        return new Way(a, -b, x - (a * x) + (b * y), b, a, y - (b * x) - (a * y));
    }

    public (double X, double Y) Of(double x, double y) => ((A * x) + (B * y) + C, (D * x) + (E * y) + F);

    public Way Then(Way next) => new(
        (next.A * A) + (next.B * D), (next.A * B) + (next.B * E), (next.A * C) + (next.B * F) + next.C,
        (next.D * A) + (next.E * D), (next.D * B) + (next.E * E), (next.D * C) + (next.E * F) + next.F);

    public Way Back()
    {
        var det = (A * E) - (B * D);
        var (a, b, d, e) = (E / det, -B / det, -D / det, A / det);
        return new Way(a, b, -((a * C) + (b * F)), d, e, -((d * C) + (e * F)));
    }
}

/// <param name="Way">From the page to the copy.</param>
public sealed record Copied(Raster Page, Way Way)
{
    /// <summary>Whether the copy is black at a point of the page, a pixel more or less across.</summary>
    /// <param name="across">The direction in which a line may have wandered.</param>
    public bool IsBlack(double x, double y, (double X, double Y) across)
    {
        for (var slip = -1.5; slip <= 1.5; slip += 0.5)
        {
            var (cx, cy) = Way.Of(x + (slip * across.X), y + (slip * across.Y));
            if (Page[(int)Math.Round(cx), (int)Math.Round(cy)] == 0)
                return true;
        }
        return false;
    }

    /// <summary>The copy laid straight again over a piece of the page.</summary>
    public Raster Piece(double left, double top, int width, int height)
    {
        var piece = new byte[width * height];
        for (var y = 0; y < height; y++)
            for (var x = 0; x < width; x++)
            {
                var (cx, cy) = Way.Of(left + x, top + y);
                piece[(y * width) + x] = (byte)Math.Round(Page.At(cx, cy));
            }
        return new Raster(width, height, piece);
    }
}
