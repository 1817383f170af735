using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>Messages or calls, of the original or of its translation, are no longer those that were compared.</summary>
public sealed class ComparisonStale : ITranslationRule
{
    public static RuleInfo Info { get; } = new("comparison-stale", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        // what has changed is translated first, then compared
        if (file.Translation.Compared is not { } compared || !file.IsSettled || SafetyWords.Of(file) is not { } words || compared.Mark?.Value == words.Mark)
            return;
        var who = compared.By?.Value ?? "somebody";
        findings.Add(
            Info,
            compared.Mark?.At ?? compared.At,
            compared.Mark is { } mark
                ? $"Messages or calls of {file.Translation.Of.Value} have changed in one of the languages since {who} compared them: their mark is {words.Mark}, not {Say.Short(mark.Value)}."
                : $"{file.Translation.Of.Value} was compared by {who}, and nothing says in which words.",
            "The signature stands under words that are printed no more. Those that are printed were compared by nobody.",
            $"Compare again what has changed, and write the day and `mark: {words.Mark}`.");
    }
}
