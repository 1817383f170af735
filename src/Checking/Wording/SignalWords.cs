using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Wording;

/// <summary>Signal words after the scheme that the workshop declares.</summary>
internal static class SignalWords
{
    public static string Spelled(SignalWord word) => word.ToString().ToUpperInvariant();

    public static SignalScheme Scheme(Scope scope) => scope.Library.Workshop.SignalScheme;

    /// <summary>The signal word of a message, or null when the workshop's scheme has no such word.</summary>
    public static SignalWord? Of(SafetyMessage message, Scope scope) =>
        message.Signal is { } word && Scheme(scope).Words().Contains(word) ? word : null;

    /// <summary>A NOTE of military manuals: it tells of no harm, so it needs no hazard and no way out of it.</summary>
    public static bool OnlyTells(SafetyMessage message, Scope scope) => Of(message, scope) == SignalWord.Note;

    /// <summary>
    /// The word that a hazard calls for; null when severity or likelihood is missing. In military manuals WARNING is
    /// for people and CAUTION for equipment (MIL-DTL-23618H 3.1.5.3); otherwise ANSI Z535.6.
    /// </summary>
    public static SignalWord? Right(Scope scope, Hazard hazard)
    {
        if (Scheme(scope) == SignalScheme.AnsiZ535)
            return hazard.RightWord;
        return hazard.Severity?.Value switch
        {
            null => null,
            HarmSeverity.Property => SignalWord.Caution,
            _ => SignalWord.Warning,
        };
    }
}
