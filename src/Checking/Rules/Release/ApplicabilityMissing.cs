using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Release;

/// <summary>A procedure does not say for which machines it is.</summary>
public sealed class ApplicabilityMissing : IProcedureRule
{
    public static RuleInfo Info { get; } = new("applicability-missing", "Release", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        // a common part and a job get their machine from elsewhere
        if (scope.Procedure.IsCommonPart || scope.Procedure.IsJob)
            return;
        var applies = scope.Procedure.AppliesTo;
        // serials or positions
        if (applies is { Value: var to } && (to.Serials is not null || !to.Positions.IsEmpty))
            return;
        findings.Add(
            Info,
            applies?.At ?? scope.Procedure.Id.At,
            $"{scope.Procedure.Id.Value} does not say for which serials or positions it is.",
            "A machine built later can have one disc more. Without a range nobody on site can tell whether this sheet is for it.",
            "Add `applies-to: {serials: from 0200, positions: [CL, CR]}` with the serials that it was tried on.");
    }
}
