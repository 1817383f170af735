using System.Collections.Immutable;
using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>A safety message is missing in the translation, has another signal word, or fewer ways to avoid the harm.</summary>
public sealed class TranslationMessageDiffers : ITranslationRule
{
    public static RuleInfo Info { get; } = new("translation-message-differs", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        foreach (var (original, own) in file.SettledSections)
            Compare(file, $"the section “{original.Heading?.Value}”", original.Messages, own.Messages, own.Heading?.At ?? file.Translation.Of.At, findings);
        foreach (var (original, own) in file.SettledSteps)
            Compare(file, $"step {Say.Number(original.Number)}", original.Messages, own.Messages, own.Name.At, findings);
    }

    private static void Compare(TranslatedFile file, string before, ImmutableArray<SafetyMessage> original, ImmutableArray<SafetyMessage> own, Location at, FindingList findings)
    {
        var of = $"{before} of {file.Translation.Of.Value}";
        if (original.Length != own.Length)
        {
            Report(at, $"Before {of} {(original.Length == 1 ? "stands" : "stand")} {Say.Count(original.Length, "safety message")}; the translation has {Say.Number(own.Length)}.", "Translate each message and put it where it stands in the original.", original.FirstOrDefault(), findings);
            return;
        }
        foreach (var (message, words) in original.Zip(own))
            Compare(file, of, message, words, findings);
    }

    private static void Compare(TranslatedFile file, string of, SafetyMessage original, SafetyMessage own, FindingList findings)
    {
        // a word that is none has a finding of its own in the original
        if (original.Signal is { } signal && own.Signal != signal)
        {
            var right = SheetLanguages.Signal(signal, file.Translation.Language.Value);
            Report(own.Word.At, $"The message before {of} is a {SignalWords.Spelled(signal)}; its translation says {Say.Short(own.Word.Value)}.", $"In {file.Language} the word is {right}.", original, findings);
        }
        if (original.Avoid.Length != own.Avoid.Length)
            Report(own.At, $"The message before {of} has {Say.Count(original.Avoid.Length, "line")} on how to avoid harm; its translation has {Say.Number(own.Avoid.Length)}.", "Translate each line as a bullet of its own.", original, findings);
    }

    private static void Report(Location at, string found, string putRight, SafetyMessage? original, FindingList findings) => findings.Add(
        Info,
        at,
        found,
        "How bad it can get, and what keeps one whole, must be the same for every crew.",
        putRight,
        original is null ? [] : [new FurtherPlace(original.At, "the original")]);
}
