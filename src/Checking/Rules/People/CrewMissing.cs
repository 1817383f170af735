using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.People;

/// <summary>Steps name roles, and the procedure does not say who has to be there.</summary>
public sealed class CrewMissing : IProcedureRule
{
    public static RuleInfo Info { get; } = new("crew-missing", "People", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        // it says so
        if (!scope.Procedure.Crew.IsEmpty)
            return;
        string[] roles = [.. scope.Procedure.AllFacts().SelectMany(Roles).Distinct(StringComparer.Ordinal)];
        // nobody is named: said by step-without-doer
        if (roles.Length == 0)
            return;
        findings.Add(
            Info,
            scope.Procedure.Id.At,
            $"{scope.Procedure.Id.Value} has no crew; its steps name {Say.And(roles)}.",
            "Who is sent out is decided before anybody reads the steps. One person short is found out at the machine, with the load on the hook.",
            $"Add `crew: {{{string.Join(", ", roles.Select(r => $"{r}: 1"))}}}`, with how many of each.");
    }

    private static IEnumerable<string> Roles(Fact fact) => (fact.Word, fact.Value) switch
    {
        (FactWord.By, NameList list) => list.Names.Select(n => n.Value),
        (_, Checker checker) => [checker.Role.Value],
        _ => [],
    };
}
