using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Messages;

/// <summary>The signal word is not the one that the hazard calls for.</summary>
public sealed class SignalWordWrong : IProcedureRule
{
    public static RuleInfo Info { get; } = new("signal-word-wrong", "Messages", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var message in scope.Procedure.Messages())
        {
            // no signal word, or no hazard to hold it against: said by other rules
            if (SignalWords.Of(message, scope) is not { } written || message.Hazard is not { } name || scope.Hazard(name.Value) is not { } hazard)
                continue;
            // the sheet does not say how bad it is
            if (SignalWords.Right(scope, hazard) is not { } right)
                continue;
            // the right word
            if (written == right)
                continue;
            findings.Add(
                Info,
                message.Word.At,
                $"This message says {SignalWords.Spelled(written)}; {hazard.Id.Value} {Harm(hazard)}, and that is {SignalWords.Spelled(right)}.",
                written < right
                    ? "The word says how far to keep away before a line is read. Too weak a word, and somebody reaches in."
                    : "The word says how far to keep away before a line is read. Too strong a word, and the next DANGER is not believed.",
                $"Write {SignalWords.Spelled(right)}. If the harm is another one, change the hazard in the data sheet, not the word.",
                new FurtherPlace(hazard.Severity?.At ?? hazard.Id.At, $"{hazard.Id.Value} {Harm(hazard)}"));
        }
    }

    private static string Harm(Hazard hazard) => hazard.Severity!.Value.Value switch
    {
        HarmSeverity.Death => $"{Likely(hazard)} kill",
        HarmSeverity.Serious => $"{Likely(hazard)} do serious harm to somebody",
        HarmSeverity.Minor => $"{Likely(hazard)} hurt somebody a little",
        _ => $"{Likely(hazard)} harm the machine and nobody",
    };

    private static string Likely(Hazard hazard) => hazard.IfIgnored?.Value == HarmLikelihood.Will ? "will" : "could";
}
