using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>A message tells people to do work that should be a step.</summary>
public sealed class WorkInMessage : IProcedureRule
{
    public static RuleInfo Info { get; } = new("work-in-message", "Messages", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var message in scope.Procedure.Messages())
            WrittenTexts.ReadBehindNature(message, text => Check(message, text, scope, findings));
    }

    private static void Check(SafetyMessage message, WrittenText text, Scope scope, FindingList findings)
    {
        foreach (var (start, end) in Sentences(text.Text))
        {
            // says what happens, where to stand, what to wait for
            if (!IsWork(text.Text.AsSpan(start..end), scope))
                continue;
            findings.Add(
                Info,
                text.Place(start, end),
                $"This {message.Word.Value} has work in it: “{text.Text[start..end]}”.",
                "Nobody signs a message. Work that stands in one is done or is not, and the record cannot tell.",
                "Make a step of it, before the step that the message protects. A message says what can happen and how to keep clear of it.");
        }
    }

    private static bool IsWork(ReadOnlySpan<char> sentence, Scope scope)
    {
        var words = sentence.Words();
        // no verb of work in front
        if (!Words.Work.Has(words.Next(), scope))
            return false;
        var behind = words.Next();
        // how it is done, not that it is done: lift with two people
        if (behind.IsEmpty || Words.How.Has(behind, scope))
            return false;
        // what people take off or away: remove rings and watches
        return !Words.OfPeople.Has(behind, scope) && !Words.OfPeople.Has(words.Next(), scope);
    }

    private static IEnumerable<TextSpan> Sentences(string text)
    {
        var start = 0;
        for (var i = 0; i <= text.Length; i++)
        {
            var ends = i == text.Length || (text[i] is '.' or ';' or ':' or '!' && (i + 1 == text.Length || text[i + 1] == ' '));
            if (!ends)
                continue;
            var sentence = text.AsSpan(start..i).TrimStart();
            if (!sentence.IsEmpty)
                yield return TextSpan.Of(i - sentence.Length, sentence.TrimEnd().Length);
            start = i + 1;
        }
    }
}
