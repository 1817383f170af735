using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>A message does not say how to avoid the harm.</summary>
public sealed class MessageWithoutAvoidance : IProcedureRule
{
    public static RuleInfo Info { get; } = new("message-without-avoidance", "Messages", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var message in scope.Procedure.Messages())
        {
            // a NOTE tells of no harm
            if (SignalWords.OnlyTells(message, scope))
                continue;
            // at least one way out
            if (!message.Avoid.IsEmpty)
                continue;
            findings.Add(
                Info,
                message.Nature.At,
                $"This {message.Word.Value} says what can happen and not how to avoid it: “{message.Nature.Value}”.",
                "Who knows the danger and not the way out works on and hopes. The way out has to be on the sheet, before the hands go in.",
                "Add a bullet that says where to stand, what to hold, what to wait for, as in `> - Both hands on the outer rim`.");
        }
    }
}
