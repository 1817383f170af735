using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>Who translated has compared the translation himself.</summary>
public sealed class ComparerIsTranslator : ITranslationRule
{
    public static RuleInfo Info { get; } = new("comparer-is-translator", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        if (file.Translation.Compared?.By is not { } by)
            return;
        foreach (Located<string> translator in file.Translation.Translators.Where(t => t.Value == by.Value).Take(1))
            findings.Add(
                Info,
                by.At,
                $"{by.Value} has translated {file.Translation.Of.Value} and compared it himself.",
                "Who chose a word reads it as he meant it. The second reader is there for the one that says something else to everybody but him.",
                "Have it compared by somebody who is not under `translators:`.",
                new FurtherPlace(translator.At, "the translator"));
    }
}
