using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace Witnessmark.Press.Tests.Proof;

/// <summary>A piece of the sheet's text, where it stands in the sheet, without blanks and in capitals.</summary>
internal sealed record SheetPiece(string Text, IElement In);

/// <summary>The sheet as it was written for the press.</summary>
internal sealed class SheetText
{
    private const int Telling = 20;

    /// <param name="whole">Selects what must stand on one page whole.</param>
    public SheetText(string html, string whole)
    {
        var main = new HtmlParser().ParseDocument(html).QuerySelector("main")!;
        Pieces = [.. Below(main)];
        Rows = [.. main.QuerySelectorAll(whole)];
        Headings = [.. main.QuerySelectorAll("h2")];
        Messages = [.. main.QuerySelectorAll(".message")];
        Boxes = [.. main.QuerySelectorAll(".box").Select(b => (b, Beside(b)))];
    }

    public List<SheetPiece> Pieces { get; }

    public List<IElement> Rows { get; }

    public List<IElement> Headings { get; }

    public List<IElement> Messages { get; }

    /// <summary>Boxes to write in, each with the smallest block around it that says something.</summary>
    public List<(IElement Box, IElement Beside)> Boxes { get; }

    /// <summary><c>step 6/1</c>, or how it begins.</summary>
    public static string NameOf(IElement row) =>
        row.QuerySelector(".code") is { } code ? $"step {Bare(code.TextContent)}" : $"\"{Said(row)[..Math.Min(Telling, Said(row).Length)]}…\"";

    public static string Said(IElement element) => string.Concat(Below(element).Select(p => p.Text));

    public static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c))).ToUpperInvariant();

    private static IElement Beside(IElement box)
    {
        var around = box.ParentElement!;
        while (!Below(around).Any())
            around = around.ParentElement!;
        return around;
    }

    // what is for those who hear the sheet, or shows only where page margins are unknown, is not on the paper
    private static IEnumerable<SheetPiece> Below(INode node)
    {
        foreach (var child in node.ChildNodes)
            if (child is IText text && Bare(text.Data) is { Length: > 0 } bare)
                yield return new SheetPiece(bare, text.ParentElement!);
            else if (child is IElement element && !element.Matches("title, desc, .aside, .no-foot"))
                foreach (var piece in Below(element))
                    yield return piece;
    }
}
