using Witnessmark.Records.Sheets;
using Witnessmark.Rendering;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press.Tests.Proof;

/// <summary>A print and what it was made from.</summary>
internal sealed record PlannedPrint(SheetPlan Plan, SheetIdentity Identity, Words Words, PressSheet Sheet)
{
    public static PlannedPrint Of(SheetPlan plan, SheetIdentity identity, Paper paper)
    {
        var words = Words.Of(plan.Procedure.Language?.Value);
        return new PlannedPrint(plan, identity, words, SheetPage.ForPress(plan, identity, paper, words));
    }

    public override string ToString() => $"{Identity.Procedure}, {Plan.Steps.Count()} steps";
}
