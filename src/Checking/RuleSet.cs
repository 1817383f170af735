using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking;

/// <summary>All rules, in the order of their topics. To add one: its .cs, its .md beside it, a line here, case files.</summary>
public static class RuleSet
{
    public static readonly ImmutableArray<Rule> All =
    [
    ];

    /// <summary>Holds every rule against every sheet and procedure.</summary>
    public static void Check(Library library, FindingList findings)
    {
        foreach (var machine in library.Machines)
            foreach (var rule in All)
                rule.Check(machine, library, findings);
        foreach (var procedure in library.Procedures)
        {
            var scope = library.ScopeOf(procedure);
            foreach (var rule in All)
                rule.Check(scope, findings);
        }
    }
}
