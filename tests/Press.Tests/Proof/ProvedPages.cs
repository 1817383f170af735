using UglyToad.PdfPig;
using Witnessmark.Engineering.Printing;

namespace Witnessmark.Press.Tests.Proof;

/// <summary>
/// Reads a PDF and holds it against the plan that it was made from. What is broken is named page by page. Codes, messages and
/// what a page must repeat come from the plan; the wording between them from the sheet that went to the press.
/// </summary>
internal static class ProvedPages
{
    public static IReadOnlyList<Broken> Broken(ReadOnlyMemory<byte> pdf, PlannedPrint print)
    {
        var pages = Pages(pdf, print);
        var sheet = new SheetText(print.Sheet.Html);
        var read = new ReadThrough(pages, sheet);
        return
        [
            .. read.Broken,
            .. MessageRules.Broken(print.Plan, pages),
            .. RowRules.Broken(sheet, read, pages),
            .. MarginRules.Broken(print, pages),
            .. pages.SelectMany(InkRules.Broken),
        ];
    }

    public static IReadOnlyList<PrintedPage> Pages(ReadOnlyMemory<byte> pdf, PlannedPrint print)
    {
        using var document = PdfDocument.Open(pdf.ToArray(), new ParsingOptions { UseLenientParsing = false });
        return [.. document.GetPages().Select(p => PrintedPage.Read(p, Inner(p, print), SquareCode(p.Width, print)))];
    }

    private static Area Inner(UglyToad.PdfPig.Content.Page page, PlannedPrint print)
    {
        var code = print.Code;
        return new Area(
            SheetMeasures.Clamp.Millimetres * Area.Millimetre,
            (code.Bottom + code.Size + SheetMeasures.FootPad.Millimetres) * Area.Millimetre,
            page.Width - (SheetMeasures.Right.Millimetres * Area.Millimetre),
            page.Height - (SheetMeasures.Clip.Millimetres * Area.Millimetre));
    }

    public static Area SquareCode(double pageWidth, PlannedPrint print)
    {
        var (right, bottom, size) = (pageWidth - (print.Code.Right * Area.Millimetre), print.Code.Bottom * Area.Millimetre, print.Code.Size * Area.Millimetre);
        return new Area(right - size, bottom, right, bottom + size);
    }
}
