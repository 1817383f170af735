using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>A message begins with a word that is no signal word.</summary>
public sealed class SignalWordUnknown : IProcedureRule
{
    public static RuleInfo Info { get; } = new("signal-word-unknown", "Messages", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var message in scope.Procedure.Messages())
        {
            // one of the four
            if (message.Signal is not null)
                continue;
            findings.Add(
                Info,
                message.Word.At,
                $"“{message.Word.Value}” is no signal word.",
                "There are four words, and each says how bad it gets: DANGER, WARNING, CAUTION for people, NOTICE for the machine alone. A fifth says nothing.",
                PutRight(scope, message));
        }
    }

    private static string PutRight(Scope scope, SafetyMessage message)
    {
        if (message.Hazard is { } name && scope.Hazard(name.Value) is { } hazard && SignalWords.Right(scope, hazard) is { } right)
            return $"Write {SignalWords.Spelled(right)}: that is the word for {hazard.Id.Value}.";
        var near = NearMiss.Of(message.Word.Value.ToUpperInvariant(), SignalWords.All.Select(SignalWords.Spelled));
        return near is null ? "Write DANGER, WARNING, CAUTION or NOTICE. What is no danger is plain text." : $"Did you mean {near}?";
    }
}
