using Witnessmark.Comparing;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Changes;

/// <summary>A change that can hurt people was released without the approvals that it needs.</summary>
public sealed class HazardApprovalsShort : IChangeRule
{
    /// <summary>When the workshop does not say otherwise; common practice, no source.</summary>
    private static readonly string[] TwoPeople = ["mechanic", "independent mechanic"];

    public static RuleInfo Info { get; } = new("hazard-approvals-short", "Changes", Severity.Fault);

    public static void Check(ChangedProcedure changed, FindingList findings)
    {
        // not out for work, or nothing that hurts
        if (changed.Procedure.Status is not { Value: ReleaseStatus.Released } status || changed.Compared.Class != ChangeClass.Hazard)
            return;
        var written = changed.Made.Library.Workshop.HazardNeeds.Select(r => r.Value).ToList();
        var needed = written.Count > 0 ? written : [.. TwoPeople];
        var fresh = changed.Procedure.Approvals.Where(a => !changed.Old.Procedure.Approvals.Any(o => Same(o, a))).ToList();
        var missing = Missing(needed, fresh);
        // each role by a person of his own
        if (missing.Count == 0)
            return;
        var first = changed.Compared.Changes[0];
        findings.Add(
            Info,
            status.At,
            $"{changed.Procedure.Id} {changed.Procedure.Version} changes what can hurt people, and nobody has approved that as {Say.And(missing)}.",
            $"The first of {Say.Count(changed.Compared.Changes.Count(c => c.Class == ChangeClass.Hazard), "such change")}: {first.Where}, {first.What}. One reader misses what he did not look for; an approval of an earlier version was not of this.",
            "Have it approved by two people, one of them independent, and add their lines under `approvals:`; or set `status: in-review`.");
    }

    private static bool Same(Approval a, Approval b) => a.Role?.Value == b.Role?.Value && a.By?.Value == b.By?.Value && a.Date?.Value == b.Date?.Value;

    private static List<string> Missing(List<string> needed, List<Approval> fresh)
    {
        var left = fresh.ToList();
        var missing = new List<string>();
        foreach (var role in needed)
            if (left.FirstOrDefault(a => a.Role?.Value == role) is { } given)
                left.RemoveAll(a => a.By?.Value == given.By?.Value);
            else
                missing.Add(role);
        return missing;
    }
}
