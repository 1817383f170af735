using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>A message stands behind the step that meets its hazard.</summary>
public sealed class MessageLate : IProcedureRule
{
    public static RuleInfo Info { get; } = new("message-late", "Messages", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var reach in MessageReach.Of(scope))
        {
            // before the step that meets the hazard, or that step is somewhere else
            if (!reach.IsLate)
                continue;
            var (place, fact) = reach.Missed[0];
            findings.Add(
                Info,
                reach.Message.Word.At,
                $"This {reach.Message.Word.Value} comes after step {place.Step.Number}, where {reach.Hazard.Id.Value} is met ({fact.Word.Spelled()} {fact.Text.Value}).",
                "The sheet is read downwards, one step at a time. A message below the step is read by somebody who has been hurt, or was lucky.",
                $"Put the message directly before step {place.Step.Number}.",
                new FurtherPlace(fact.At, "here the hazard is met"));
        }
    }
}
