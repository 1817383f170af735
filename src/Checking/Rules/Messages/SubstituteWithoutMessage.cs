using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>What stands in for a special tool is used, and no message says what danger that adds.</summary>
public sealed class SubstituteWithoutMessage : IProcedureRule
{
    public static RuleInfo Info { get; } = new("substitute-without-message", "Messages", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var tool in scope.ToolLists.SelectMany(t => t.Others))
        {
            // nothing stands in for it, or it adds no danger
            if (tool is not { Substitute: { } substitute, ExtraHazard: { } extra } || scope.Hazard(extra.Value) is not { } hazard)
                continue;
            foreach (var (place, fact) in scope.Procedure.StepFacts())
            {
                // not used here: counted, or put away
                if (!IsUsed(scope, fact, substitute.Value))
                    continue;
                // warned of
                if (place.Warns(hazard))
                    continue;
                // the hazard itself says that this work meets it: hazard-without-message asks for it
                if (HazardWork.In(scope, place.Step, hazard) is not null)
                    continue;
                findings.Add(
                    Info,
                    fact.At,
                    $"{Say.Step(place)} uses {substitute.Value} in place of {tool.Id.Value}, which brings the hazard {extra.Value}, and no message before it says so.",
                    "Who has the right tool once and the makeshift the next time works with the same hands and does not know what has changed.",
                    $"Put the message before the step, with `> - hazard: {extra.Value}`, or use {tool.Id.Value}.",
                    new FurtherPlace(extra.At, $"what {substitute.Value} brings"));
            }
        }
    }

    private static bool IsUsed(Scope scope, Fact fact, string name) =>
        fact is { Word: FactWord.Tools or FactWord.Tool, Value: NameList list } ? list.Names.Any(n => n.Value == name) : fact.Word is FactWord.Place or FactWord.Fit && fact.Handles(name, scope);
}
