using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>A decision says nothing for some of the results that it goes by.</summary>
public sealed class DecisionOpen : IProcedureRule
{
    public static RuleInfo Info { get; } = new("decision-open", "Steps", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var decision in Decision.All(scope))
        {
            // the rest is said
            if (decision.HasOtherwise)
                continue;
            // each case has its outcome
            if (decision.Cases.FirstOrDefault(c => !decision.In(c).Any()) is not { IsDefault: false } open)
                continue;
            findings.Add(
                Info,
                decision.Decide.At,
                $"{Say.Step(decision.Place)} decides {decision.Decide.Text.Value} and says nothing for {Say.And(open.Select(r => $"{r.Thing} = {r.Value}"))}.",
                "Where the table ends, somebody decides alone at the machine, as a rule in favour of going on.",
                "Add the outcome for it, or a last one that takes the rest: `outcome: name otherwise`.");
        }
    }
}
