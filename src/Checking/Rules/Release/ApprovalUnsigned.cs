using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Release;

/// <summary>An approval without a name.</summary>
public sealed class ApprovalUnsigned : IProcedureRule
{
    public static RuleInfo Info { get; } = new("approval-unsigned", "Release", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var approval in scope.Procedure.Approvals)
        {
            // somebody stands for it
            if (!string.IsNullOrWhiteSpace(approval.By?.Value))
                continue;
            findings.Add(
                Info,
                approval.At,
                $"The approval{(approval.Role is { } role ? $" as {role.Value}" : "")} has no initials.",
                "An approval is a person who can be asked. A role alone has approved nothing.",
                "Add `by:` with the initials of the one who approved it.");
        }
    }
}
