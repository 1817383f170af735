using SkiaSharp;

namespace Witnessmark.Browser.Tests.Photocopy;

/// <summary>A picture in grey: 0 is black, 255 white. What lies outside is white paper.</summary>
public sealed class Raster(int width, int height, byte[] grey)
{
    public const double DotsPerInch = 300;
    public const double PerMillimetre = DotsPerInch / 25.4;

    public int Width => width;

    public int Height => height;

    public byte[] Grey => grey;

    public byte this[int x, int y] => x < 0 || y < 0 || x >= width || y >= height ? (byte)255 : grey[(y * width) + x];

    public static Raster White(int width, int height)
    {
        var grey = new byte[width * height];
        Array.Fill(grey, (byte)255);
        return new Raster(width, height, grey);
    }

    /// <summary>A screenshot laid on paper with a white margin all around.</summary>
    public static Raster FromPng(byte[] png, int margin)
    {
        using var bitmap = SKBitmap.Decode(png);
        var paper = White(bitmap.Width + (2 * margin), bitmap.Height + (2 * margin));
        var colours = bitmap.Pixels;
        for (var y = 0; y < bitmap.Height; y++)
            for (var x = 0; x < bitmap.Width; x++)
            {
                var c = colours[(y * bitmap.Width) + x];
                paper.Grey[((y + margin) * paper.Width) + x + margin] = (byte)Math.Round((0.299 * c.Red) + (0.587 * c.Green) + (0.114 * c.Blue));
            }
        return paper;
    }

    public byte[] ToPng()
    {
        using var bitmap = new SKBitmap(width, height, SKColorType.Gray8, SKAlphaType.Opaque);
        grey.AsSpan().CopyTo(bitmap.GetPixelSpan());
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    /// <summary>Between four pixels.</summary>
    public double At(double x, double y)
    {
        var (left, top) = ((int)Math.Floor(x), (int)Math.Floor(y));
        var (u, v) = (x - left, y - top);
        if (left >= 0 && top >= 0 && left + 1 < width && top + 1 < height)
        {
            var at = (top * width) + left;
            return ((1 - v) * (((1 - u) * grey[at]) + (u * grey[at + 1]))) + (v * (((1 - u) * grey[at + width]) + (u * grey[at + width + 1])));
        }
        return ((1 - v) * (((1 - u) * this[left, top]) + (u * this[left + 1, top]))) + (v * (((1 - u) * this[left, top + 1]) + (u * this[left + 1, top + 1])));
    }

    /// <summary>Gaussian blur, first along the lines, then across.</summary>
    /// <param name="sigma">Pixels.</param>
    public Raster Blurred(double sigma)
    {
        var reach = (int)Math.Ceiling(3 * sigma);
        var weights = Enumerable.Range(-reach, (2 * reach) + 1).Select(i => Math.Exp(-i * i / (2 * sigma * sigma))).ToArray();
        var sum = weights.Sum();
        return Folded(weights, sum, reach, 1, 0).Folded(weights, sum, reach, 0, 1);
    }

    private Raster Folded(double[] weights, double sum, int reach, int dx, int dy)
    {
        var folded = new byte[width * height];
        Array.Fill(folded, (byte)255);
        var stride = dx + (dy * width);
        for (var y = reach * dy; y < height - (reach * dy); y++)
            for (var x = reach * dx; x < width - (reach * dx); x++)
            {
                var at = (y * width) + x;
                var total = 0.0;
                for (var i = -reach; i <= reach; i++)
                    total += weights[i + reach] * grey[at + (i * stride)];
                folded[at] = (byte)((total / sum) + 0.5);
            }
        return new Raster(width, height, folded);
    }
}
