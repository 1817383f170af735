using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>A message has a signal word and no words about what can happen.</summary>
public sealed class MessageWithoutNature : IProcedureRule
{
    public static RuleInfo Info { get; } = new("message-without-nature", "Messages", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var message in scope.Procedure.Messages())
        {
            // it says what can happen
            if (!string.IsNullOrWhiteSpace(message.Nature.Value))
                continue;
            findings.Add(
                Info,
                message.Word.At,
                $"This {message.Word.Value} does not say what can happen.",
                "The bold words are all that is read at a glance. A signal word alone makes people look round and then go on.",
                $"Write it behind the colon, still bold: **{message.Word.Value}: what can hurt whom, or break what**.");
        }
    }
}
