using System.Collections.Immutable;

namespace Witnessmark.Language.Model;

/// <summary>The vocabulary of safety messages that a workshop writes in.</summary>
public enum SignalScheme
{
    /// <summary>ANSI Z535.6: DANGER, WARNING and CAUTION for people, NOTICE for the machine alone.</summary>
    AnsiZ535,

    /// <summary>Military manuals: WARNING for people, CAUTION for equipment, NOTE for the rest, in that order (MIL-DTL-23618H 3.1.5.3).</summary>
    Military,
}

public static class SignalSchemes
{
    private static readonly ImmutableArray<SignalWord> Ansi = [SignalWord.Danger, SignalWord.Warning, SignalWord.Caution, SignalWord.Notice];
    private static readonly ImmutableArray<SignalWord> Military = [SignalWord.Warning, SignalWord.Caution, SignalWord.Note];

    /// <summary>Its words, strongest first.</summary>
    public static ImmutableArray<SignalWord> Words(this SignalScheme scheme) => scheme == SignalScheme.Military ? Military : Ansi;

    /// <summary>Whether the word says that people can be hurt: then it carries the safety alert triangle.</summary>
    public static bool IsForPeople(this SignalScheme scheme, SignalWord word) =>
        scheme == SignalScheme.Military ? word == SignalWord.Warning : word is SignalWord.Danger or SignalWord.Warning or SignalWord.Caution;
}
