using Witnessmark.Records.Sheets;
using Witnessmark.Rendering;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press.Tests.Proof;

/// <summary>The sheet to work from: rows with codes, messages above them and boxes in them.</summary>
internal sealed record SheetPrint(SheetPlan Plan, SheetIdentity Identity, Words Words, PressSheet Sheet) : FootedPrint(Plan, Identity, Words, Sheet)
{
    public static SheetPrint Of(SheetPlan plan, SheetIdentity identity, Words words, Paper paper) =>
        new(plan, identity, words, SheetPage.ForPress(plan, identity, paper, words));

    public override string Whole => "article.step";

    protected override string Called => Words.Sheet;

    public override IEnumerable<Broken> Own(SheetText text, ReadThrough read, IReadOnlyList<PrintedPage> pages) =>
        [.. MessageRules.Broken(Plan, pages), .. RowRules.Apart(text, read, pages)];

    protected override PlannedPrint Again(SheetIdentity identity, Paper paper) => Of(Plan, identity, Words, paper);
}
