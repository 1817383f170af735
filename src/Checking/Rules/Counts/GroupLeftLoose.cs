using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Counts;

/// <summary>A group is put in here and nothing brings it to its torque.</summary>
public sealed class GroupLeftLoose : IProcedureRule
{
    public static RuleInfo Info { get; } = new("group-left-loose", "Counts", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        var tightened = scope.Tightenings().ToLookup(t => (t.Group.Id.Value, t.AtPlace));
        foreach (var work in GroupWork.In(scope))
        {
            // not put in here
            if (work.Of(FactWord.Fit, FactWord.Snug).LastOrDefault() is not { Place: not null } last)
                continue;
            // the contract hands it over in another state
            if (work.Promised.Any(p => p != "torqued"))
                continue;
            // has no torque: a pin, a clip
            if (work.Group.Torque is null)
                continue;
            var after = tightened[(work.Group.Id.Value, work.AtPlace)]
                .Where(t => ReferenceEquals(t.Step.Part, work.Part) && t.Step.Step.Number >= last.Place.Step.Number)
                .ToList();
            var reached = after.Sum(t => Number(t, work));
            // all of them reach it
            if (reached >= work.Has || (after.Count > 0 && work.Depends))
                continue;
            Report(work, last, reached, findings);
        }
    }

    /// <summary>How many one tightening brings to torque: what its step says, or all of them.</summary>
    private static int Number(TighteningJob job, GroupWork work) =>
        work.Of(FactWord.Tighten).FirstOrDefault(h => ReferenceEquals(h.Place.Step, job.Step.Step)) is { Place: not null } own
            ? own.Number
            : work.Has;

    private static void Report(GroupWork work, Handling last, int reached, FindingList findings) =>
        findings.Add(
            Info,
            last.Amount.At,
            reached == 0
                ? $"{Say.Step(last.Place)} leaves {work.Name} {(last.Verb == FactWord.Snug ? "snug" : "in by hand")}, and no step after it brings them to torque."
                : $"Only {reached} of the {work.Has} {work.Name} are brought to torque after step {last.Place.Step.Number} of {last.Place.Procedure.Id.Value}.",
            "Snug looks like tight. The joint opens under load, the bolts break one after the other, and the first sign is oil or a wheel.",
            $"Add a step with `tighten: {work.Name}`, or say in the contract what is handed over: `ends-with: {work.Name} = snug`.");
}
