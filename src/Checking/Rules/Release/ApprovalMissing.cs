using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Release;

/// <summary>A released procedure lacks an approval that the workshop asks for.</summary>
public sealed class ApprovalMissing : IProcedureRule
{
    public static RuleInfo Info { get; } = new("approval-missing", "Release", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        // not out for work
        if (scope.Procedure.Status is not { Value: ReleaseStatus.Released } status)
            return;
        var given = scope.Procedure.Approvals.Select(a => a.Role?.Value).ToList();
        var missing = scope.Library.Workshop.ReleasedNeeds.Where(r => !given.Contains(r.Value)).ToList();
        // all there
        if (missing.Count == 0)
            return;
        findings.Add(
            Info,
            status.At,
            $"{scope.Procedure.Id.Value} is released, and nobody has approved it as {Say.And(missing.Select(m => m.Value))}.",
            "A procedure goes to the machine because somebody who did not write it has gone through it. Until then it is a draft with a stamp.",
            "Have it approved and add the line under `approvals:`, or set `status: in-review`.",
            new FurtherPlace(missing[0].At, "the workshop asks for it"));
    }
}
