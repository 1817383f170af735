using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>A message begins with a word that is no signal word.</summary>
public sealed class SignalWordUnknown : IProcedureRule
{
    public static RuleInfo Info { get; } = new("signal-word-unknown", "Messages", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var message in scope.Procedure.Messages())
        {
            // one of the scheme's
            if (SignalWords.Of(message, scope) is not null)
                continue;
            findings.Add(new Finding(
                Info,
                message.Word.At,
                message.Signal is null ? $"“{message.Word.Value}” is no signal word." : $"“{message.Word.Value}” is no signal word in this workshop, which writes {Vocabulary(scope)}.",
                SignalWords.Scheme(scope) == SignalScheme.Military
                    ? "There are three words: WARNING for people, CAUTION for equipment, NOTE for what else must be known. A fourth says nothing."
                    : "There are four words, and each says how bad it gets: DANGER, WARNING, CAUTION for people, NOTICE for the machine alone. A fifth says nothing.",
                PutRight(scope, message))
            {
                Correction = Correction.Respelled(message.Word, SignalWords.Scheme(scope).Words().Select(SignalWords.Spelled)),
            });
        }
    }

    private static string PutRight(Scope scope, SafetyMessage message)
    {
        if (message.Hazard is { } name && scope.Hazard(name.Value) is { } hazard && SignalWords.Right(scope, hazard) is { } right)
            return $"Write {SignalWords.Spelled(right)}: that is the word for {hazard.Id.Value}.";
        var words = SignalWords.Scheme(scope).Words().Select(SignalWords.Spelled).ToList();
        var near = NearMiss.Of(message.Word.Value.ToUpperInvariant(), words);
        return near is null ? $"Write {Say.Or(words)}. What is no danger is plain text." : $"Did you mean {near}?";
    }

    private static string Vocabulary(Scope scope) => SignalWords.Scheme(scope) == SignalScheme.Military ? "the words of military manuals" : "the words of ANSI Z535";
}
