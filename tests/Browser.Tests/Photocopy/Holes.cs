namespace Witnessmark.Browser.Tests.Photocopy;

/// <summary>Counters of a letter: white that black closes in all around.</summary>
public static class Holes
{
    /// <summary>Smaller white is noise inside a stroke.</summary>
    private const int LeastPixels = 3;

    public static int In(Raster page, Mark at)
    {
        var piece = Raster.White((int)at.Width, (int)at.Height);
        for (var y = 0; y < piece.Height; y++)
            for (var x = 0; x < piece.Width; x++)
                piece.Grey[(y * piece.Width) + x] = (byte)Math.Round(page.At(at.X + x, at.Y + y));
        return In(piece);
    }

    public static int In(Raster piece)
    {
        var seen = new bool[piece.Width * piece.Height];
        var holes = 0;
        for (var start = 0; start < seen.Length; start++)
            if (!seen[start] && piece.Grey[start] >= 128)
            {
                var (size, open) = Fill(piece, seen, start);
                if (!open && size >= LeastPixels)
                    holes++;
            }
        return holes;
    }

    private static (int Size, bool Open) Fill(Raster piece, bool[] seen, int start)
    {
        var (size, open) = (0, false);
        var next = new Stack<int>([start]);
        seen[start] = true;
        while (next.TryPop(out var at))
        {
            size++;
            var (x, y) = (at % piece.Width, at / piece.Width);
            foreach (var (nx, ny) in new[] { (x - 1, y), (x + 1, y), (x, y - 1), (x, y + 1) })
            {
                if (nx < 0 || ny < 0 || nx >= piece.Width || ny >= piece.Height)
                    open = true;
                else if (!seen[(ny * piece.Width) + nx] && piece[nx, ny] >= 128)
                {
                    seen[(ny * piece.Width) + nx] = true;
                    next.Push((ny * piece.Width) + nx);
                }
            }
        }
        return (size, open);
    }
}
