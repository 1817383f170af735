using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Release;

/// <summary>Initials stand for nobody in the workshop file.</summary>
public sealed class InitialsUnknown : IProcedureRule
{
    public static RuleInfo Info { get; } = new("initials-unknown", "Release", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        var people = scope.Library.Workshop.People;
        // a workshop without a list of people
        if (people.Count == 0)
            return;
        var approvers = scope.Procedure.Approvals.Select(a => a.By).OfType<Language.Text.Located<string>>();
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
}
