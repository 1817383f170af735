using AngleSharp.Dom;

namespace Witnessmark.Press.Tests.Proof;

/// <summary>Rows are whole, and so are the boxes in them.</summary>
internal static class RowRules
{
    private const double ShortestBox = 8 * Area.Millimetre;
    private const double Line = 0.6 * Area.Millimetre;

    public static IEnumerable<Broken> Broken(SheetText sheet, ReadThrough read, IReadOnlyList<PrintedPage> pages) =>
        [.. sheet.Rows.SelectMany(r => Split(r, read, pages)), .. Boxes(sheet, read, pages), .. pages.SelectMany(Cut)];

    private static IEnumerable<Broken> Split(IElement row, ReadThrough read, IReadOnlyList<PrintedPage> pages)
    {
        foreach (var (what, element) in new[] { ("all", row), ("the grid", row.QuerySelector(".tables")), ("the ladder", row.QuerySelector(".ladder")), ("the bolt circle", row.QuerySelector(".passes")) })
            if (element is not null && read.Of(element).Select(p => pages[p.Page].Number).Distinct().ToList() is { Count: > 1 } on)
                yield return new Broken(on[0], PageRule.Row, $"{what} of {SheetText.NameOf(row)} stands on pages {string.Join(" and ", on)}");
    }

    public static IEnumerable<Broken> Apart(SheetText sheet, ReadThrough read, IReadOnlyList<PrintedPage> pages) =>
        sheet.Messages.SelectMany(m => Apart(m, sheet, read, pages));

    /// <summary>A message and the first step that it holds for, nothing but other messages of that step between them.</summary>
    private static IEnumerable<Broken> Apart(IElement message, SheetText sheet, ReadThrough read, IReadOnlyList<PrintedPage> pages)
    {
        if (sheet.Rows.FirstOrDefault(r => message.CompareDocumentPosition(r).HasFlag(DocumentPositions.Following)) is not { } row)
            yield break;
        var (said, step) = (read.Of(message).ToList(), read.Of(row).ToList());
        if (said.Count == 0 || step.Count == 0)
            yield break;
        if (said.Count > 1 || said[0].Page != step[0].Page)
            yield return new Broken(pages[said[0].Page].Number, PageRule.Message, $"the message \"{SheetText.Said(message)[..20]}…\" is not whole on the page of {SheetText.NameOf(row)}, page {pages[step[0].Page].Number}");
        else if (said[0].Area.Bottom < step[0].Area.Top - 1)
            yield return new Broken(pages[said[0].Page].Number, PageRule.Message, $"the message \"{SheetText.Said(message)[..20]}…\" is not above {SheetText.NameOf(row)}");
    }

    /// <summary>A frame with nothing in it is a box to write in. Boxes have no words, so those of a row are where its words are.</summary>
    private static IEnumerable<Broken> Boxes(SheetText sheet, ReadThrough read, IReadOnlyList<PrintedPage> pages)
    {
        var asked = sheet.Boxes.CountBy(b => read.Of(b.Beside).Select(p => p.Page).FirstOrDefault(-1)).ToDictionary();
        for (var i = 0; i < pages.Count; i++)
        {
            var there = pages[i].Frames.Count(f => pages[i].Signs.All(s => !f.Meets(s.Place, 0.5)));
            if (there != asked.GetValueOrDefault(i))
                yield return new Broken(pages[i].Number, PageRule.Boxes, $"{there} empty boxes, where its rows ask for {asked.GetValueOrDefault(i)}");
        }
    }

    private static IEnumerable<Broken> Cut(PrintedPage page) =>
        page.Frames.Where(f => f.Height + Line < ShortestBox).Select(f => new Broken(page.Number, PageRule.Boxes, $"a box is {f.Height / Area.Millimetre:0.0} mm high"));
}
