using Witnessmark.Records.Sheets;
using Witnessmark.Rendering;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press.Tests.Proof;

/// <summary>A print and what it was made from.</summary>
internal sealed record PlannedPrint(SheetPlan Plan, SheetIdentity Identity, Words Words, PressSheet Sheet)
{
    public static PlannedPrint Of(SheetPlan plan, SheetIdentity identity, Words words, Paper paper) =>
        new(plan, identity, words, SheetPage.ForPress(plan, identity, paper, words));

    /// <summary>As a copy for one machine.</summary>
    public PlannedPrint Issued(Paper paper) => Of(
        Plan, Identity with { SetMark = "K7M", Unit = "14", Serial = "0417", Place = "CL", PrintedAt = "2031-06-11 06:40" }, Words, paper);

    public PlannedPrint On(Paper paper) => Of(Plan, Identity, Words, paper);

    public FootCode Code => Sheet.Code ?? throw new InvalidOperationException("a sheet has a code");

    public override string ToString() => $"{Identity.Procedure}, {Plan.Steps.Count()} steps";
}
