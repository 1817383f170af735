using System.Collections.Immutable;
using AngleSharp.Html.Parser;
using Witnessmark.Language.Text;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Trial;

namespace Witnessmark.Press.Tests.Proof;

/// <summary>A sheet with declared errors: TRIAL on every page, the last section from another copy, one message gone. Its key says which.</summary>
internal sealed record TrialPrint(SheetPlan Plan, SheetIdentity Identity, Words Words, PressSheet Sheet) : FootedPrint(Plan, Identity, Words, Sheet)
{
    // the browser sets it by lines of text, the press by millimetres
    private const double Give = 2 * Area.Millimetre;

    public required string StrayMark { get; init; }

    public required string MissingMessage { get; init; }

    /// <summary>Of the sheet that it is the trial of.</summary>
    public required FootCode TrueCode { get; init; }

    public static TrialPrint Of(SheetPrint sheet, ImmutableArray<OutputFile> kit, Paper paper)
    {
        var language = sheet.Identity.WordsHash is null ? "" : $"-{sheet.Words.Language}";
        var key = new HtmlParser().ParseDocument(Read(kit, $"key{language}")).QuerySelectorAll(".answers tbody tr")
            .Select(row => row.QuerySelectorAll("td").Select(d => d.TextContent).ToList()).ToDictionary(cells => cells[0]);
        var copy = key[sheet.Words.Planted(ErrorKind.PageOfAnotherCopy)];
        return new TrialPrint(sheet.Plan, sheet.Identity with { SetMark = copy[2] }, sheet.Words, new PressSheet(Read(kit, $"sheet{language}-{paper.ToString().ToLowerInvariant()}"), Code: null))
        {
            StrayMark = copy[3],
            MissingMessage = key[sheet.Words.Planted(ErrorKind.MessageMissing)][2],
            TrueCode = sheet.Code,
        };
    }

    public override string Whole => "article.step";

    /// <summary>Around the word TRIAL.</summary>
    public override int HeadFrames => 1;

    public override FootCode Code => TrueCode;

    protected override string Called => Words.Sheet;

    public override Area CodePlace(Area paper)
    {
        var place = base.CodePlace(paper);
        return new Area(place.Left - Give, place.Bottom - Give, place.Right + Give, place.Top + Give);
    }

    public override string CodeSays(PrintedPage page, int pages) => CodeStart.Replace(Identity.SetMark!, SetMark(page), StringComparison.Ordinal);

    /// <summary>What holds for a sheet, but for the message that the key says is missing: that one must be missed.</summary>
    public override IEnumerable<Broken> Own(SheetText text, ReadThrough read, IReadOnlyList<PrintedPage> pages)
    {
        var missed = MessageRules.Broken(Plan, pages).ToLookup(IsDeclared);
        if (!missed[true].Any())
            yield return new Broken(pages[0].Number, PageRule.Message, $"\"{MissingMessage}\" is there, and the key says that it is not");
        foreach (var broken in missed[false].Concat(RowRules.Apart(text, read, pages)))
            yield return broken;
        if (!pages.Any(p => SetMark(p) == StrayMark))
            yield return new Broken(pages[^1].Number, PageRule.Margins, $"no page is from copy {StrayMark}, and the key says that one is");
    }

    protected override string Middle(PrintedPage page, int pages) => Words.Trial;

    protected override string? SetMark(PrintedPage page) =>
        MessageRules.Codes(page).Any(c => Plan.Sections[^1].Steps.SelectMany(s => s.Performed.Prepend(s)).Any(s => s.Code.ToString() == c.Code)) ? StrayMark : Identity.SetMark;

    protected override PlannedPrint Again(SheetIdentity identity, Paper paper) => throw new NotSupportedException("a trial sheet is never issued");

    private bool IsDeclared(Broken broken) =>
        broken.Rule is PageRule.Message or PageRule.Repeated && broken.What.Split('"') is [_, var nature, ..] && SheetText.Bare(MissingMessage).Contains(nature, StringComparison.Ordinal);

    private static string Read(ImmutableArray<OutputFile> kit, string name) =>
        System.Text.Encoding.UTF8.GetString(kit.Single(f => f.Path == $"trial-kit/{name}.html").Bytes.Span);
}
