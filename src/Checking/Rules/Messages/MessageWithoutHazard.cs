using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>A message names no declared hazard.</summary>
public sealed class MessageWithoutHazard : IProcedureRule
{
    public static RuleInfo Info { get; } = new("message-without-hazard", "Messages", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var message in scope.Procedure.Messages())
        {
            // a NOTE tells of no harm
            if (SignalWords.OnlyTells(message, scope))
                continue;
            // it names one; whether that one is declared is checked with all other names
            if (message.Hazard is not null)
                continue;
            findings.Add(
                Info,
                message.Word.At,
                $"This {message.Word.Value} names no hazard: “{message.Nature.Value}”.",
                "The signal word follows from how bad and how likely the harm is. Without a declared hazard nobody can hold the word against it.",
                "Add `> - hazard: name`, and declare the hazard in the data sheet with `severity:` and `if-ignored:` when it is not there yet.");
        }
    }
}
