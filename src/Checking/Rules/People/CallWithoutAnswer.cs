using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.People;

/// <summary>Something is called out and nobody is told what to answer.</summary>
public sealed class CallWithoutAnswer : IProcedureRule
{
    public static RuleInfo Info { get; } = new("call-without-answer", "People", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var place in scope.Procedure.Walk())
        {
            // nothing called
            if (place.Step.Find(FactWord.Call) is not { Value: SpokenWords words } call)
                continue;
            // a call of the workshop: it has its answer
            if (scope.Call(words.Text.Value) is not null)
                continue;
            // answered
            if (place.Step.Find(FactWord.Answer) is not null)
                continue;
            var near = NearMiss.Of(words.Text.Value, scope.Library.Workshop.Calls.Names);
            findings.Add(
                Info,
                call.Text.At,
                $"{Say.Step(place)} calls “{words.Text.Value}” and has no answer to it.",
                "Silence after a call means clear to one and not heard to the other.",
                near is null
                    ? "Add `- answer:` with words that only somebody who has looked can say: a place, a number, where the hands are."
                    : $"Did you mean the call {near}? It has its answer. Otherwise add `- answer:`.");
        }
    }
}
