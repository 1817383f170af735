using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>A message does not say what happens to people or to the machine.</summary>
public sealed class MessageWithoutConsequence : IProcedureRule
{
    public static RuleInfo Info { get; } = new("message-without-consequence", "Messages", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var message in scope.Procedure.Messages())
        {
            // a NOTE tells of no harm
            if (SignalWords.OnlyTells(message, scope))
                continue;
            // no words at all: said by the reader
            if (string.IsNullOrWhiteSpace(message.Nature.Value))
                continue;
            // a word of harm
            if (NamesHarm(message.Nature.Value, scope) || NamesHarm(message.Rest.Plain(), scope))
                continue;
            findings.Add(
                Info,
                message.Nature.At,
                $"This {message.Word.Value} names a thing and no harm: “{message.Nature.Value}”.",
                "“Moving piston” is news to nobody. “Crushes fingers” is what stops a hand.",
                "Say what happens to people or to the machine: crushes, burns, cuts, ruins the plates.");
        }
    }

    private static bool NamesHarm(string text, Scope scope)
    {
        foreach (var word in text.Words())
            if (Words.Harm.HasBeginningOf(word, scope))
                return true;
        return false;
    }
}
