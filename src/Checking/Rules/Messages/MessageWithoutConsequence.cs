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
        var harm = scope.IsSpanish() ? Words.HarmSpanish : Words.HarmEnglish;
        foreach (var message in scope.Procedure.Messages())
        {
            // no words at all: said by the reader
            if (string.IsNullOrWhiteSpace(message.Nature.Value))
                continue;
            var words = message.Nature.Value.Words().Concat(message.Rest.Plain().Words());
            // a word of harm
            if (words.Any(w => harm.Any(h => w.StartsWith(h, StringComparison.Ordinal))))
                continue;
            findings.Add(
                Info,
                message.Nature.At,
                $"This {message.Word.Value} names a thing and no harm: “{message.Nature.Value}”.",
                "“Moving piston” is news to nobody. “Crushes fingers” is what stops a hand.",
                "Say what happens to people or to the machine: crushes, burns, cuts, ruins the plates.");
        }
    }
}
