using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>A message tells people to do work that should be a step.</summary>
public sealed class WorkInMessage : IProcedureRule
{
    public static RuleInfo Info { get; } = new("work-in-message", "Messages", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var message in scope.Procedure.Messages())
            foreach (var text in WrittenTexts.Of(message).Skip(1))
                foreach (var (start, sentence) in Sentences(text.Text))
                {
                    // says what happens, where to stand, what to wait for
                    if (!IsWork(sentence.Words(), scope))
                        continue;
                    findings.Add(
                        Info,
                        text.Place(start, start + sentence.Length),
                        $"This {message.Word.Value} has work in it: “{sentence}”.",
                        "Nobody signs a message. Work that stands in one is done or is not, and the record cannot tell.",
                        "Make a step of it, before the step that the message protects. A message says what can happen and how to keep clear of it.");
                }
    }

    private static bool IsWork(string[] words, Scope scope)
    {
        // no verb of work in front
        if (words is not [var verb, .. var rest] || !Words.Work.Has(verb, scope))
            return false;
        // how it is done, not that it is done: lift with two people
        if (rest is [] || Words.How.Has(rest[0], scope))
            return false;
        // what people take off or away: remove rings and watches
        return !rest.Take(2).Any(w => Words.OfPeople.Has(w, scope));
    }

    private static IEnumerable<(int Start, string Sentence)> Sentences(string text)
    {
        var start = 0;
        for (var i = 0; i <= text.Length; i++)
        {
            var ends = i == text.Length || (text[i] is '.' or ';' or ':' or '!' && (i + 1 == text.Length || text[i + 1] == ' '));
            if (!ends)
                continue;
            var sentence = text[start..i];
            var blank = sentence.Length - sentence.TrimStart().Length;
            if (sentence.Trim().Length > 0)
                yield return (start + blank, sentence.Trim());
            start = i + 1;
        }
    }
}
