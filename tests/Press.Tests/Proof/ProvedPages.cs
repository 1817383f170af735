using UglyToad.PdfPig;

namespace Witnessmark.Press.Tests.Proof;

/// <summary>
/// Reads a PDF and holds it against the plan that it was made from. What is broken is named page by page. Identity, codes, messages
/// and what a page must repeat come from the plan; the wording between them from the sheet that went to the press.
/// </summary>
internal static class ProvedPages
{
    public static IReadOnlyList<Broken> Broken(ReadOnlyMemory<byte> pdf, PlannedPrint print)
    {
        var pages = Pages(pdf, print);
        var text = new SheetText(print.Sheet.Html, print.Whole);
        var read = new ReadThrough(pages, text);
        return
        [
            .. read.Broken,
            .. print.Own(text, read, pages),
            .. RowRules.Broken(text, read, pages),
            .. MarginRules.Broken(print, pages),
            .. pages.SelectMany(InkRules.Broken),
        ];
    }

    public static IReadOnlyList<PrintedPage> Pages(ReadOnlyMemory<byte> pdf, PlannedPrint print)
    {
        using var document = PdfDocument.Open(pdf.ToArray(), new ParsingOptions { UseLenientParsing = false });
        return [.. document.GetPages().Select(p => PrintedPage.Read(p, print))];
    }
}
