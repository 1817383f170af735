using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>A procedure is released, its translation has safety words, and nobody has compared it with the original.</summary>
public sealed class ComparisonMissing : ITranslationRule
{
    public static RuleInfo Info { get; } = new("comparison-missing", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        // not out for work, or compared
        if (file.Procedure is not { Status.Value: ReleaseStatus.Released } procedure || file.Translation.Compared is not null)
            return;
        // not translated to the end: nothing to compare yet
        if (!file.IsSettled || SafetyWords.Of(file) is not { } words)
            return;
        findings.Add(
            Info,
            file.Translation.Of.At,
            $"{procedure.Id.Value} is released, and nobody has compared its translation into {file.Language} with the original.",
            "Of two crews at one machine, one would be warned in words that only the translator has read. So the translated sheet is not printed.",
            $"Somebody who reads both, and did not translate, compares message by message and call by call, and signs: `compared:` with `by` and his initials, `date` and the day, `mark: {words.Mark}`.");
    }
}
