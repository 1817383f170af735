using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Counts;

/// <summary>Of parts that are replaced as a set, only some are fitted.</summary>
public sealed class SetBroken : IProcedureRule
{
    public static RuleInfo Info { get; } = new("set-broken", "Counts", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var fitted in scope.Procedure.Amounts().Where(a => a.Fact.Word == FactWord.Fit).GroupBy(a => (a.Place.Part, a.Amount.Thing.Value)))
        {
            // no set, or nobody says how many it has
            if (scope.Part(fitted.Key.Value) is not { Replace: { Value: "as a set" } set, Count: { } count } part)
                continue;
            // all of it, or as often as something else says
            if (fitted.Any(f => f.Amount.Count is null || f.Place.Effective(FactWord.ForEach) is not null))
                continue;
            var sum = fitted.Sum(f => f.Amount.Count!.Value.Value);
            // whole; too many is said by amount-over
            if (sum >= count.Value)
                continue;
            var last = fitted.Last();
            findings.Add(
                Info,
                last.Amount.At,
                $"{Say.Step(last.Place)} fits {Say.Number(sum)} of {Say.Number(count.Value)} {part.Id.Value}, which are replaced as a set.",
                "New ones beside worn ones take the load alone: they burn or break, and the set is as old as its oldest piece.",
                $"Fit all {Say.Number(count.Value)} new, or say on the data sheet that they may be changed one by one.",
                new FurtherPlace(set.At, "replaced as a set"));
        }
    }
}
