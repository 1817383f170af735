using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Counts;

/// <summary>What a part of a procedure fits adds up to fewer fasteners, or more, than the group has.</summary>
public sealed class FastenersLeftOut : IProcedureRule
{
    public static RuleInfo Info { get; } = new("fasteners-left-out", "Counts", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var work in GroupWork.In(scope))
        {
            var fitted = work.Of(FactWord.Fit).ToList();
            // nothing fitted here, or only sometimes
            if (fitted.Count == 0 || work.Depends)
                continue;
            // some come off again in between
            if (work.Of(FactWord.Remove).Any())
                continue;
            // the contract says that some stay out
            if (work.Promised.Any(p => p is not ("torqued" or "snug" or "fitted")))
                continue;
            var sum = fitted.Sum(f => f.Number);
            // all of them; and a single number over the count is said by amount-over
            if (sum == work.Has || fitted.Any(f => f.Number > work.Has))
                continue;
            Report(work, fitted, sum, findings);
        }
    }

    private static void Report(GroupWork work, List<Handling> fitted, int sum, FindingList findings)
    {
        var last = fitted[^1];
        var adding = fitted.Count == 1 ? $"{sum}" : $"{string.Join(" + ", fitted.Select(f => f.Number))} = {sum}";
        var missing = work.Has - sum;
        findings.Add(new Finding(
            Info,
            last.Amount.At,
            $"{last.Place.Procedure.Id.Value} fits {adding} of {work.Name}; the group has {work.Has}.",
            missing > 0
                ? $"{missing} of them {(missing == 1 ? "stays" : "stay")} on the bench, and the other {sum} carry the load of {work.Has}."
                : "One hole is counted twice, so nobody can say from the sheet which ones are in.",
            missing > 0
                ? $"Fit the missing {(missing == 1 ? "one" : $"{missing}")} before the part ends, or say what stays out: `ends-with: {work.Group.Id.Value} = {missing} of {work.Has} removed`."
                : $"Let the numbers add up to {work.Has}.")
        {
            Further =
            [
                .. fitted.SkipLast(1).Select(f => new FurtherPlace(f.Amount.At, $"step {f.Place.Step.Number} fits {f.Number}")),
                new FurtherPlace(work.Group.Count!.Value.At, $"the data sheet has {work.Has}"),
            ],
        });
    }
}
