using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Release;

/// <summary>A released procedure performs one that is not released.</summary>
public sealed class DraftPerformed : IProcedureRule
{
    public static RuleInfo Info { get; } = new("draft-performed", "Release", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        // not out for work itself
        if (scope.Procedure.Status?.Value != ReleaseStatus.Released)
            return;
        foreach (var pin in scope.Procedure.Uses)
        {
            // not in the workshop: said with all other unknown names
            if (scope.Library.Procedure(pin.Procedure.Value) is not { Status: { } status } performed)
                continue;
            // released as well
            if (status.Value == ReleaseStatus.Released)
                continue;
            findings.Add(
                Info,
                pin.Procedure.At,
                $"{scope.Procedure.Id.Value} is released and performs {performed.Id.Value}, which is {Spelled(status.Value)}.",
                "The sheet prints both. What nobody has approved goes to the machine under the other one's approval.",
                $"Release {performed.Id.Value} first, or take {scope.Procedure.Id.Value} back to `status: in-review`.",
                new FurtherPlace(status.At, $"{performed.Id.Value} is {Spelled(status.Value)}"));
        }
    }

    private static string Spelled(ReleaseStatus status) => status switch
    {
        ReleaseStatus.Draft => "a draft",
        ReleaseStatus.InReview => "in review",
        ReleaseStatus.Withdrawn => "withdrawn",
        _ => "released",
    };
}
