using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.People;

/// <summary>An answer or a hold is "OK" and says nothing of what was seen.</summary>
public sealed class AnswerWithoutValue : IProcedureRule
{
    public static RuleInfo Info { get; } = new("answer-without-value", "People", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var (_, fact) in scope.Procedure.StepFacts())
        {
            // something called out, or no words at all
            if (fact is not { Word: FactWord.Answer or FactWord.Hold, Value: SpokenWords spoken })
                continue;
            // a place to fill in
            if (spoken.Blanks > 0)
                continue;
            // it says what was seen
            if (!SaysNothing(spoken.Text.Value, scope))
                continue;
            findings.Add(
                Info,
                fact.Text.At,
                $"“{spoken.Text.Value}” can be said without looking.",
                "“OK” comes by itself after the tenth step. A number, a place or where the hands are can be said only by somebody who has looked.",
                "Ask for what is seen, with ___ where a value belongs: `left over ___`, `clear, both hands on the rim`.");
        }
    }

    private static bool SaysNothing(string answer, Scope scope)
    {
        var words = answer.Words();
        // no words are no answer at all
        if (!words.MoveNext())
            return false;
        do
            if (!Words.Empty.Has(words.Current, scope))
                return false;
        while (words.MoveNext());
        return true;
    }
}
