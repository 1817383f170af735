using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>A decision says two things for the same results.</summary>
public sealed class DecisionTwice : IProcedureRule
{
    public static RuleInfo Info { get; } = new("decision-twice", "Steps", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var decision in Decision.All(scope))
        {
            // each case has one outcome at most
            if (decision.Cases.FirstOrDefault(c => decision.In(c).Skip(1).Any()) is not { IsDefault: false } both)
                continue;
            var outcomes = decision.In(both).Select(o => o.Name).ToList();
            findings.Add(
                Info,
                decision.Decide.At,
                $"{Say.Step(decision.Place)} decides {decision.Decide.Text.Value} as {Say.And(outcomes.Select(o => o.Value))} for {Say.And(both.Select(r => $"{r.Thing} = {r.Value}"))}.",
                "Two crews decide differently on the same readings, and both have followed the sheet.",
                "Write the outcomes so that one of them at most holds; a last one with `otherwise` takes the rest.",
                [.. outcomes.Select(o => new FurtherPlace(o.At, $"holds as {o.Value}"))]);
        }
    }
}
