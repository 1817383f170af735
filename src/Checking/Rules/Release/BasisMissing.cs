using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Release;

/// <summary>A procedure does not say what it rests on.</summary>
public sealed class BasisMissing : IProcedureRule
{
    public static RuleInfo Info { get; } = new("basis-missing", "Release", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        // it says so
        if (!string.IsNullOrWhiteSpace(scope.Procedure.Basis?.Value))
            return;
        findings.Add(
            Info,
            scope.Procedure.Basis?.At ?? scope.Procedure.Id.At,
            $"{scope.Procedure.Id.Value} does not say what it rests on.",
            "When the maker's data change, or somebody is hurt, the first question is where this way of working came from.",
            "Add `basis:` with maker's data and revision, a standard, or the shop's own trial with its date.");
    }
}
