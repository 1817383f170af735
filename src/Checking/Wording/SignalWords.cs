using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Wording;

/// <summary>Signal words after the scheme that the workshop declares.</summary>
internal static class SignalWords
{
    public static readonly SignalWord[] All = Enum.GetValues<SignalWord>();

    public static string Spelled(SignalWord word) => word.ToString().ToUpperInvariant();

    /// <summary>
    /// The word that a hazard calls for; null when severity or likelihood is missing. In military manuals WARNING is
    /// for people and CAUTION for equipment (MIL-DTL-23618H 3.1.5.3); otherwise ANSI Z535.6.
    /// </summary>
    public static SignalWord? Right(Scope scope, Hazard hazard)
    {
        if (scope.Library.Workshop.SignalWords?.Value != "military")
            return hazard.RightWord;
        return hazard.Severity?.Value switch
        {
            null => null,
            HarmSeverity.Property => SignalWord.Caution,
            _ => SignalWord.Warning,
        };
    }
}
