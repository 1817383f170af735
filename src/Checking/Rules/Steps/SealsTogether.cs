using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>Two seals that keep different things apart are fitted in one step.</summary>
public sealed class SealsTogether : IProcedureRule
{
    public static RuleInfo Info { get; } = new("seals-together", "Steps", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var (place, fact) in scope.Procedure.StepFacts())
        {
            // nothing fitted
            if (fact is not { Word: FactWord.Fit, Value: Amounts amounts })
                continue;
            var seals = amounts.All.Select(a => (Amount: a, Part: scope.Part(a.Thing.Value))).Where(s => s.Part is { Between.IsEmpty: false }).ToList();
            // one, or all of them keep the same things apart
            if (seals.DistinctBy(s => Apart(s.Part!)).Skip(1).FirstOrDefault() is not { Part: { } second } other)
                continue;
            var first = seals[0].Part!;
            findings.Add(
                Info,
                other.Amount.At,
                $"{Say.Step(place)} fits {first.Id.Value}, between {Apart(first)}, and {second.Id.Value}, between {Apart(second)}, at once.",
                "Seals that lie side by side are exchanged: both go in, both look right, and the one in the wrong place lets its oil through.",
                "Give each a step of its own, and say where it goes.",
                new FurtherPlace(first.Id.At, first.Id.Value),
                new FurtherPlace(second.Id.At, second.Id.Value));
        }
    }

    private static string Apart(PartKind part) => Say.And(part.Between.Select(b => b.Value));
}
