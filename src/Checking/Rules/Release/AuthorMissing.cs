using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Release;

/// <summary>A procedure does not say who wrote it.</summary>
public sealed class AuthorMissing : IProcedureRule
{
    public static RuleInfo Info { get; } = new("author-missing", "Release", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        // somebody stands for it
        if (!scope.Procedure.Authors.IsEmpty)
            return;
        findings.Add(
            Info,
            scope.Procedure.Id.At,
            $"{scope.Procedure.Id.Value} does not say who wrote it.",
            "A question from the machine needs somebody to go to. And without the author nobody can tell whether the one who approved it is another one.",
            "Add `authors:` with initials from the workshop file: `authors: [MO]`.");
    }
}
