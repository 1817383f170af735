using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace Witnessmark.Press.Tests.Proof;

/// <summary>Head and foot of every page, word for word, and the square code as a reader reads it.</summary>
internal static class MarginRules
{
    private const int Dots = 6;
    private const int Quiet = 4;

    // what is drawn is read, not photographed: nothing has to be looked for in it
    private static readonly Dictionary<DecodeHintType, object> Pure = new() { [DecodeHintType.PURE_BARCODE] = true };
    private const double LeastModule = 0.495 * Area.Millimetre; // 0.5 mm, and what a PDF rounds away

    public static IEnumerable<Broken> Broken(PlannedPrint print, IReadOnlyList<PrintedPage> pages)
    {
        foreach (var page in pages)
        {
            foreach (var (where, there, wanted) in print.Margins(page, pages.Count).Where(m => m.There != SheetText.Bare(m.Wanted)))
                yield return new Broken(page.Number, PageRule.Margins, $"the {where} says \"{there}\" and should say \"{SheetText.Bare(wanted)}\"");
            if (page.Marginal.FirstOrDefault(s => !Printable(page).Holds(s.Place, 0)) is { Size: > 0 } off)
                yield return new Broken(page.Number, PageRule.Margins, $"\"{off.Value}\" stands {Math.Min(off.Place.Bottom, page.Paper.Top - off.Place.Top) / Area.Millimetre:0.0} mm from the edge of the paper");
            if (page.Holes.Count != print.Holes)
                yield return new Broken(page.Number, PageRule.Margins, $"{page.Holes.Count} holes to punch, and there should be {print.Holes}");
            if (page.HeadFrames.Count != print.HeadFrames)
                yield return new Broken(page.Number, PageRule.Margins, $"{page.HeadFrames.Count} frames at the head, and there should be {print.HeadFrames}");
            foreach (var broken in Code(page, print.CodeSays(page, pages.Count)))
                yield return broken;
        }
    }

    private static IEnumerable<Broken> Code(PrintedPage page, string code)
    {
        if (Read(page) is var read && read != code)
            yield return new Broken(page.Number, PageRule.SquareCode, $"the square code says {read ?? "nothing"} and should say {code}");
        if (page.Code.Count == 0)
            yield break;
        var square = page.Code.Aggregate((a, b) => a.With(b));
        if (page.Marginal.Concat(page.Signs).Any(s => s.Place.Meets(square, 0)))
            yield return new Broken(page.Number, PageRule.SquareCode, "words stand on the square code");
        if (!Printable(page).Holds(square, 0))
            yield return new Broken(page.Number, PageRule.SquareCode, "the square code runs into the edge that a printer leaves out");
        if (page.Code.Min(m => m.Width) is var module && module < LeastModule)
            yield return new Broken(page.Number, PageRule.SquareCode, $"a module of the square code is {module / Area.Millimetre:0.00} mm wide");
    }

    // most printers leave out the outer 5 mm (common practice, no source)
    private static Area Printable(PrintedPage page) => new(
        page.Paper.Left + (5 * Area.Millimetre), page.Paper.Bottom + (5 * Area.Millimetre), page.Paper.Right - (5 * Area.Millimetre), page.Paper.Top - (5 * Area.Millimetre));

    private static string? Read(PrintedPage page)
    {
        if (page.Code.Count == 0)
            return null;
        var around = page.Code.Aggregate((a, b) => a.With(b));
        var module = page.Code.Min(m => m.Width);
        var across = (int)Math.Round(around.Width / module);
        var edge = (across + (2 * Quiet)) * Dots;
        var grey = new byte[edge * edge];
        Array.Fill(grey, byte.MaxValue);
        for (var y = 0; y < across; y++)
            for (var x = 0; x < across; x++)
                if (page.Code.Any(black => black.Left < X(x) && X(x) < black.Right && black.Bottom < Y(y) && Y(y) < black.Top))
                    for (var dot = 0; dot < Dots; dot++)
                        Array.Fill(grey, (byte)0, ((((y + Quiet) * Dots) + dot) * edge) + ((x + Quiet) * Dots), Dots);
        var source = new RGBLuminanceSource(grey, edge, edge, RGBLuminanceSource.BitmapFormat.Gray8);
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)), Pure)?.Text;

        double X(int at) => around.Left + ((at + 0.5) * module);

        double Y(int at) => around.Top - ((at + 0.5) * module);
    }
}
