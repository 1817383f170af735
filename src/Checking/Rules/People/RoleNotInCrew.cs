using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.People;

/// <summary>A step needs a role that the crew does not have.</summary>
public sealed class RoleNotInCrew : IProcedureRule
{
    public static RuleInfo Info { get; } = new("role-not-in-crew", "People", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        var crew = scope.Procedure.Crew;
        // no crew written: nothing to hold it against
        if (crew.IsEmpty)
            return;
        var there = crew.Select(c => c.Role.Value).ToHashSet(StringComparer.Ordinal);
        foreach (var role in scope.Procedure.AllFacts().SelectMany(Roles))
        {
            // in the crew
            if (there.Contains(role.Value))
                continue;
            // a role that the workshop does not know: said with all other unknown names
            if (!scope.IsRole(role.Value))
                continue;
            findings.Add(
                Info,
                role.At,
                $"{scope.Procedure.Id.Value} needs the role {role.Value} here; its crew is {Say.And(crew.Select(c => $"{c.Number.Value} {c.Role.Value}"))}.",
                "The crew is sent out by that line. Whoever is missing at this step is missed on site, with the machine open.",
                $"Add {role.Value} to `crew:`, or give the step to somebody who is there.",
                new FurtherPlace(crew[0].Role.At, "the crew"));
        }
    }

    private static IEnumerable<Located<string>> Roles(Fact fact) => (fact.Word, fact.Value) switch
    {
        (FactWord.By, NameList list) => list.Names,
        (_, Checker checker) => [checker.Role],
        (_, HandOverValue hand) => hand.From.Concat(hand.To),
        _ => [],
    };
}
