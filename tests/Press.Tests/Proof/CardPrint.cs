using Witnessmark.Engineering.Printing;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Fender;

namespace Witnessmark.Press.Tests.Proof;

/// <summary>The fender card: numbers only, holes in its wide margin, and no heading left behind by its numbers.</summary>
internal sealed record CardPrint(SheetPlan Plan, SheetIdentity Identity, Words Words, PressSheet Sheet) : FootedPrint(Plan, Identity, Words, Sheet)
{
    public static CardPrint Of(SheetPlan plan, SheetIdentity identity, Words words, Paper paper)
    {
        var own = identity with { TemplateHash = FenderCard.OwnTemplateHash };
        return new(plan, own, words, FenderCard.ForPress(plan, own, paper, words));
    }

    public override string Whole => "section .keep";

    public override int Holes => 3;

    protected override string Called => Words.FenderCard;

    // place and page number meet at the head of a narrow page
    protected override string Middle(PrintedPage page, int pages) => "· " + base.Middle(page, pages);

    protected override Measure Left => SheetMeasures.CardClamp;

    public override string CodeSays(PrintedPage page, int pages) => $"{CodeStart} C{page.Number}/{pages}";

    public override IEnumerable<Broken> Own(SheetText text, ReadThrough read, IReadOnlyList<PrintedPage> pages) =>
        from heading in text.Headings
        from at in read.Of(heading)
        where heading.NextElementSibling is { } numbers && read.Of(numbers).All(n => n.Page != at.Page)
        select new Broken(pages[at.Page].Number, PageRule.Row, $"\"{heading.TextContent}\" stands there without its numbers");

    protected override PlannedPrint Again(SheetIdentity identity, Paper paper) => Of(Plan, identity, Words, paper);
}
