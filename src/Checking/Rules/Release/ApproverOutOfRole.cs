using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Release;

/// <summary>Somebody approves in a role that he does not have.</summary>
public sealed class ApproverOutOfRole : IProcedureRule
{
    public static RuleInfo Info { get; } = new("approver-out-of-role", "Release", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var approval in scope.Procedure.Approvals)
        {
            // no role, no name, or nobody that the workshop knows: said by others
            if (approval.Role is not { } role || approval.By is not { } by || scope.Library.Workshop.People.Find(by.Value) is not { } person)
                continue;
            string[] roles = [.. person.Also.Select(a => a.Value).Prepend(person.Role?.Value).OfType<string>()];
            // in his own role
            if (roles.Length == 0 || roles.Contains(role.Value))
                continue;
            findings.Add(
                Info,
                by.At,
                $"{by.Value} approves as {role.Value}; in the workshop file {by.Value} is {Say.And(roles)}.",
                "The role stands for a licence and for not being the author. With the wrong person behind it the signature is worth nothing.",
                $"Have it approved by somebody who is {role.Value}. If {by.Value} has become that, write it in the workshop file.",
                new FurtherPlace(person.Id.At, $"{by.Value} is {Say.And(roles)}"));
        }
    }
}
