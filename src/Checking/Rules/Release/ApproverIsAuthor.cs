using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Release;

/// <summary>Only those who wrote a procedure have approved it.</summary>
public sealed class ApproverIsAuthor : IProcedureRule
{
    public static RuleInfo Info { get; } = new("approver-is-author", "Release", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        var approvers = scope.Procedure.Approvals.Select(a => a.By).OfType<Located<string>>().ToList();
        var authors = scope.Procedure.Authors.Select(a => a.Value).ToHashSet(StringComparer.Ordinal);
        // nobody yet, or somebody who did not write it
        if (approvers.Count == 0 || approvers.Any(a => !authors.Contains(a.Value)))
            return;
        findings.Add(
            Info,
            approvers[0].At,
            $"{scope.Procedure.Id.Value} is written by {Say.And(authors)} and approved by nobody else.",
            "Who wrote a number reads it as he meant it. The second reader is there for the digit that slipped.",
            "Have it approved by somebody who is not under `authors:`.",
            new FurtherPlace(scope.Procedure.Authors[0].At, "the author"));
    }
}
