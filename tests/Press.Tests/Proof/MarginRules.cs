using Witnessmark.Records.Hashing;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace Witnessmark.Press.Tests.Proof;

/// <summary>Head and foot of every page, word for word, and the square code as a reader reads it.</summary>
internal static class MarginRules
{
    private const double DotsPerPoint = 6;
    private const double LeastModule = 0.5 * Area.Millimetre;

    public static IEnumerable<Broken> Broken(PlannedPrint print, IReadOnlyList<PrintedPage> pages)
    {
        foreach (var page in pages)
        {
            var counter = $"{print.Words.Sheet} {page.Number} {print.Words.OutOf} {pages.Count}";
            foreach (var (where, there, wanted) in new[] { ("head", page.Head, Head(print, counter)), ("foot", page.Foot, Foot(print, counter)) })
                if (there != SheetText.Bare(wanted))
                    yield return new Broken(page.Number, PageRule.Margins, $"the {where} says \"{there}\" and should say \"{SheetText.Bare(wanted)}\"");
            var code = string.Join(' ', new[] { print.Identity.Procedure, print.Identity.Version, ShortHash.Plain(print.Identity.Hash), print.Identity.SetMark, $"{page.Number}/{pages.Count}" }.OfType<string>()).ToUpperInvariant();
            if (Read(page) is var read && read != code)
                yield return new Broken(page.Number, PageRule.SquareCode, $"the square code says {read ?? "nothing"} and should say {code}");
            if (page.Code.Count > 0 && page.Code.Min(m => m.Width) < LeastModule)
                yield return new Broken(page.Number, PageRule.SquareCode, $"a module of the square code is {page.Code.Min(m => m.Width) / Area.Millimetre:0.00} mm wide");
        }
    }

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
        var help = print.Plan.Scope.Library.Workshop.Help is { } h ? $"{words.Help}: {h.Value}" : "";
        var printed = id.PrintedAt.Length > 0 ? $"{words.Printed} {id.PrintedAt} · " : "";
        return $"{id.Procedure} {id.Version} · {ShortHash.Of(id.Hash)} · {copy} · {counter} {help} {words.StandingNotice} {words.SheetsDisagree} {printed}{words.Forms} {ShortHash.Of(id.TemplateHash)}";
    }

    private static string? Read(PrintedPage page)
    {
        if (page.Code.Count == 0)
            return null;
        var around = page.Code.Aggregate((a, b) => a.With(b));
        var quiet = page.Code.Min(m => m.Width) * 4;
        var edge = (int)Math.Ceiling((Math.Max(around.Width, around.Height) + (2 * quiet)) * DotsPerPoint);
        var grey = new byte[edge * edge];
        Array.Fill(grey, byte.MaxValue);
        foreach (var black in page.Code)
            for (var y = Dot(around.Top + quiet - black.Top); y < Dot(around.Top + quiet - black.Bottom); y++)
                Array.Fill(grey, (byte)0, (y * edge) + Dot(black.Left - around.Left + quiet), Dot(black.Right - around.Left + quiet) - Dot(black.Left - around.Left + quiet));
        var source = new RGBLuminanceSource(grey, edge, edge, RGBLuminanceSource.BitmapFormat.Gray8);
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)))?.Text;
    }

    private static int Dot(double points) => (int)Math.Round(points * DotsPerPoint);
}
