using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Release;

/// <summary>Initials stand for nobody in the workshop file.</summary>
public sealed class InitialsUnknown : IProcedureRule
{
    public static RuleInfo Info { get; } = new("initials-unknown", "Release", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        var people = scope.Library.Workshop.People;
        // a workshop without a list of people writes drafts only
        if (people.Count == 0)
        {
            if (scope.Procedure.Status is { Value: ReleaseStatus.Released } status)
                findings.Add(Nobody(scope.Procedure, status.At));
            return;
        }
        var approvers = scope.Procedure.Approvals.Select(a => a.By).OfType<Located<string>>();
        foreach (var initials in scope.Procedure.Authors.Concat(approvers))
        {
            // one of them
            if (people.Find(initials.Value) is not null)
                continue;
            var near = NearMiss.Of(initials.Value, people.Names);
            findings.Add(
                Info,
                initials.At,
                $"{initials.Value} is nobody in the workshop file; it has {Say.And(people.Names)}.",
                "Initials are how a question finds the person who wrote or approved a sheet. These lead nowhere.",
                near is null ? "Write the initials of somebody under `people:`, or add the person there." : $"Did you mean {near}? Otherwise add the person under `people:`.");
        }
    }

    private static Finding Nobody(Procedure procedure, Location released) => new(
        Info,
        released,
        $"{procedure.Id.Value} is released, and the workshop file names no people.",
        "Somebody has to stand for it: who approved it, who issues it, who signs. Here nobody does.",
        "List them under `people:` in the workshop file, each with a role, or set `status: draft`.");
}
