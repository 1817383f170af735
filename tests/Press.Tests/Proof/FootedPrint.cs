using Witnessmark.Engineering.Printing;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press.Tests.Proof;

/// <summary>Set mark and page at the head of every page; identity, help, standing notice and code at its foot.</summary>
internal abstract record FootedPrint(SheetPlan Plan, SheetIdentity Identity, Words Words, PressSheet Sheet) : PlannedPrint(Plan, Identity, Words, Sheet)
{
    public virtual FootCode Code => Sheet.Code ?? throw new InvalidOperationException($"a {this} has a code");

    /// <summary>Of the copy that the page says it is of.</summary>
    protected virtual string? SetMark(PrintedPage page) => Identity.SetMark;

    protected abstract string Called { get; }

    protected virtual Measure Left => SheetMeasures.Clamp;

    public override Area Inner(Area paper) => new(
        Left.Millimetres * Area.Millimetre,
        (Code.Bottom + Code.Size + SheetMeasures.FootPad.Millimetres) * Area.Millimetre,
        paper.Right - (SheetMeasures.Right.Millimetres * Area.Millimetre),
        paper.Top - (SheetMeasures.Clip.Millimetres * Area.Millimetre));

    public override Area CodePlace(Area paper)
    {
        var (right, bottom, size) = (paper.Right - (Code.Right * Area.Millimetre), Code.Bottom * Area.Millimetre, Code.Size * Area.Millimetre);
        return new Area(right - size, bottom, right, bottom + size);
    }

    public override string CodeSays(PrintedPage page, int pages) => $"{CodeStart} {page.Number}/{pages}";

    public override IEnumerable<Margin> Margins(PrintedPage page, int pages) =>
        [new("head", page.Head, Head(page, pages)), new("foot", page.Foot, Foot(page, pages))];

    protected virtual string Middle(PrintedPage page, int pages) => $"{Called} {page.Number} {Words.OutOf} {pages}";

    private string Head(PrintedPage page, int pages)
    {
        var unit = Identity.Unit is null ? "" : $" · {Words.Unit} {Identity.Unit} {Identity.Place}";
        return $"{Identity.Procedure}{unit} {Middle(page, pages)} {SetMark(page) ?? Words.Specimen}";
    }

    private string Foot(PrintedPage page, int pages)
    {
        var copy = SetMark(page) is { } mark ? $"{Words.Copy} {mark}" : $"{Words.Specimen}, {Words.NotIssued}";
        var help = Plan.Scope.Library.Workshop.Help is { } h ? $"{Words.Help}: {Plan.Scope.Library.Tongue.Text(h.Value)}" : "";
        return $"{Identity.Procedure} {Identity.Version} · {ShortHash.Of(Identity.Hash)} · {copy} · {Called} {page.Number} {Words.OutOf} {pages}{Printed} {help} {Words.StandingNotice} {Words.SheetsDisagree} {Words.Forms} {ShortHash.Of(Identity.TemplateHash)}{Wording}";
    }
}
