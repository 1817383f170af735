using Witnessmark.Records.Hashing;
using Witnessmark.Records.Sheets;
using Witnessmark.Records.Tags;
using Witnessmark.Rendering;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Tags;

namespace Witnessmark.Press.Tests.Proof;

/// <summary>Tags on leaves: a leaf is a page, a tag is inside the frame that it is cut from, and each says which print it belongs to.</summary>
internal sealed record TagPrint(SheetPlan Plan, SheetIdentity Identity, Words Words, PressSheet Sheet) : PlannedPrint(Plan, Identity, Words, Sheet)
{
    private const double LeastEdge = 5 * Area.Millimetre;
    private const double Leaf = 190 * Area.Millimetre;
    private const double Head = 25 * Area.Millimetre;

    public static TagPrint Of(SheetPlan plan, SheetIdentity identity, Words words, Paper paper)
    {
        var own = identity with { TemplateHash = TagPage.OwnTemplateHash };
        return new(plan, own, words, new PressSheet(TagPage.Render(TagPlanner.Plan(plan), plan, own, paper, words), Code: null));
    }

    public override string Whole => ".cut";

    public override Area Inner(Area paper)
    {
        var beside = (paper.Width - Leaf) / 2;
        return new(beside, LeastEdge, paper.Right - beside, paper.Top - LeastEdge);
    }

    public override Area CodePlace(Area paper) => new(Inner(paper).Right - Head, paper.Top - Head, Inner(paper).Right, paper.Top);

    public override string CodeSays(PrintedPage page, int pages) => $"{CodeStart} T{page.Number}/{pages}";

    public override IEnumerable<Margin> Margins(PrintedPage page, int pages)
    {
        var unit = Identity.Unit is null ? "" : $" · {Words.Unit} {Identity.Unit} {Identity.Place}";
        var copy = Identity.SetMark is { } mark ? $"{Words.Copy} {mark}" : $"{Words.Specimen}, {Words.NotIssued}";
        var head = $"{Words.TagsFor} {Identity.Procedure}{unit} · {Words.Leaf} {page.Number} {Words.OutOf} {pages} {Identity.Procedure} {Identity.Version} · {ShortHash.Of(Identity.Hash)} · {copy}{Printed} {Words.Forms} {ShortHash.Of(Identity.TemplateHash)}{Wording} {Words.CutTearPunch}";
        yield return new("head", page.Head, "");
        yield return new("foot", page.Foot, "");
        yield return new("head of the leaf", page.Text[..Math.Min(page.Text.Length, SheetText.Bare(head).Length)], head);
    }

    public override IEnumerable<Broken> Own(SheetText text, ReadThrough read, IReadOnlyList<PrintedPage> pages)
    {
        var copy = Identity.SetMark is { } mark ? $"{Words.Copy} {mark}" : Words.Specimen;
        var says = $"{Identity.Procedure} {Identity.Version} · {ShortHash.Of(Identity.Hash)} · {copy}{Wording} {Words.StandingNotice}";
        foreach (var tag in text.Rows)
            foreach (var at in read.Of(tag))
            {
                var page = pages[at.Page];
                if (!page.Frames.Any(f => f.Holds(at.Area, 0)))
                    yield return new Broken(page.Number, PageRule.Inside, $"{SheetText.NameOf(tag)} is not inside a frame to cut");
                if (!page.Within(at.Area).Contains(SheetText.Bare(says), StringComparison.Ordinal))
                    yield return new Broken(page.Number, PageRule.Margins, $"{SheetText.NameOf(tag)} does not say \"{says}\"");
            }
    }

    protected override PlannedPrint Again(SheetIdentity identity, Paper paper) => Of(Plan, identity, Words, paper);
}
