using UglyToad.PdfPig;

namespace Witnessmark.Press.Tests.Proof;

/// <summary>
/// Reads a PDF and holds it against the plan that it was made from. What is broken is named page by page. Codes, messages and
/// what a page must repeat come from the plan; the wording between them from the sheet that went to the press.
/// </summary>
internal static class ProvedPages
{
    // the page margins of sheet.css
    private const double LeftMargin = 13 * Area.Millimetre;
    private const double RightMargin = 8 * Area.Millimetre;
    private const double TopMargin = 20 * Area.Millimetre;
    private const double Padding = 1.5 * Area.Millimetre;

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
        return [.. document.GetPages().Select(p => PrintedPage.Read(p, Inner(p, print), SquareCode(p, print)))];
    }

    private static Area Inner(UglyToad.PdfPig.Content.Page page, PlannedPrint print)
    {
        var code = print.Sheet.Code;
        return new Area(LeftMargin, ((code.Bottom + code.Size) * Area.Millimetre) + Padding, page.Width - RightMargin, page.Height - TopMargin);
    }

    private static Area SquareCode(UglyToad.PdfPig.Content.Page page, PlannedPrint print)
    {
        var (right, bottom, size) = (page.Width - (print.Sheet.Code.Right * Area.Millimetre), print.Sheet.Code.Bottom * Area.Millimetre, print.Sheet.Code.Size * Area.Millimetre);
        return new Area(right - size, bottom, right, bottom + size);
    }
}
