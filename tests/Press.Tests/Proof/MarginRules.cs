using Witnessmark.Records.Hashing;
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
    private const double LeastModule = 0.5 * Area.Millimetre;

    public static IEnumerable<Broken> Broken(PlannedPrint print, IReadOnlyList<PrintedPage> pages)
    {
        foreach (var page in pages)
        {
            var counter = $"{print.Words.Sheet} {page.Number} {print.Words.OutOf} {pages.Count}";
            foreach (var (where, there, wanted) in new[] { ("head", page.Head, Head(print, counter)), ("foot", page.Foot, Foot(print, counter)) })
                if (there != SheetText.Bare(wanted))
                    yield return new Broken(page.Number, PageRule.Margins, $"the {where} says \"{there}\" and should say \"{SheetText.Bare(wanted)}\"");
            if (page.Marginal.FirstOrDefault(s => !Printable(page).Holds(s.Place, 0)) is { Size: > 0 } off)
                yield return new Broken(page.Number, PageRule.Margins, $"\"{off.Value}\" stands {Math.Min(off.Place.Bottom, page.Paper.Top - off.Place.Top) / Area.Millimetre:0.0} mm from the edge of the paper");
            if (page.Code.Count > 0 && page.Code.Aggregate((a, b) => a.With(b)) is var square && page.Marginal.Any(s => s.Place.Meets(square, 0)))
                yield return new Broken(page.Number, PageRule.Margins, "the foot stands on the square code");
            var code = string.Join(' ', new[] { print.Identity.Procedure, print.Identity.Version, ShortHash.Plain(print.Identity.Hash), print.Identity.SetMark, $"{page.Number}/{pages.Count}" }.OfType<string>()).ToUpperInvariant();
            if (Read(page) is var read && read != code)
                yield return new Broken(page.Number, PageRule.SquareCode, $"the square code says {read ?? "nothing"} and should say {code}");
            if (page.Code.Count > 0 && page.Code.Min(m => m.Width) < LeastModule)
                yield return new Broken(page.Number, PageRule.SquareCode, $"a module of the square code is {page.Code.Min(m => m.Width) / Area.Millimetre:0.00} mm wide");
        }
    }

    // most printers leave out the outer 5 mm (common practice, no source)
    private static Area Printable(PrintedPage page) => new(
        page.Paper.Left + (5 * Area.Millimetre), page.Paper.Bottom + (5 * Area.Millimetre), page.Paper.Right - (5 * Area.Millimetre), page.Paper.Top - (5 * Area.Millimetre));

    private static string Head(PlannedPrint print, string counter)
    {
        var id = print.Identity;
        var unit = id.Unit is null ? "" : $" · {print.Words.Unit} {id.Unit} {id.Place}";
        return $"{id.Procedure}{unit} {counter} {id.SetMark ?? print.Words.Specimen}";
    }

    private static string Foot(PlannedPrint print, string counter)
    {
        var (id, words) = (print.Identity, print.Words);
        var copy = id.SetMark is null ? $"{words.Specimen}, {words.NotIssued}" : $"{words.Copy} {id.SetMark}";
        var help = print.Plan.Scope.Library.Workshop.Help is { } h ? $"{words.Help}: {print.Plan.Scope.Library.Tongue.Text(h.Value)}" : "";
        var printed = id.PrintedAt.Length > 0 ? $"{words.Printed} {id.PrintedAt} · " : "";
        return $"{id.Procedure} {id.Version} · {ShortHash.Of(id.Hash)} · {copy} · {counter} {help} {words.StandingNotice} {words.SheetsDisagree} {printed}{words.Forms} {ShortHash.Of(id.TemplateHash)}{(id.WordsHash is { } wording ? $" · {words.Wording} {words.Language} {ShortHash.Of(wording)}" : "")}";
    }

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
