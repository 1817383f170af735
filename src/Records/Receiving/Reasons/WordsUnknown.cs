using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Issuing;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>
/// The copy was in words that no translation of this version has here. The work is that of the version, so nothing
/// contradicts; but what the crew had read is not known, and a record that leaves it open is not complete.
/// </summary>
public sealed class WordsUnknown : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Query("words-unknown");

    public static void Check(Held held, FindingList findings)
    {
        // of another version, or a head that was changed: said already
        if (held is not { Words: { } words, SignOff.Words: { } typed, Procedure: { } procedure } || CopyMarkWrong.Fits(held) is not true)
            return;
        var known = SheetTranslations.LanguagesOf(held.Library, procedure).Contains(words.Language)
            ? WordsHash.Of(SheetTranslations.Of(held.Library.ScopeOf(procedure), words.Language)).Hex
            : null;
        // the words that are printed today
        if (known is not null && words.AreOf(known))
            return;
        findings.Add(
            Info,
            typed.At,
            $"The words {typed.Value} are of no known translation of {procedure.Id} {procedure.Version}; "
                + (known is null ? $"it is not translated into {Spoken(words.Language)} here." : $"those here are {CopyWords.Of(words.Language, known)}."),
            "Steps, numbers and limits are those of the version in every language. But nobody could show later in which words the crew had been warned.",
            "Compare with the foot of the paper. If it says the same, find the translation as it was printed and receive the record with it. If nobody finds it, someone who reads both languages compares the paper with the original, and the paper stays with the record.");
    }

    private static string Spoken(string language) => SheetLanguages.All.Contains(language) ? SheetLanguages.Spoken(language) : $"“{language}”";
}
