using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>The words of the original are not, or not known to be, those that were translated.</summary>
public sealed class TranslationStale : ITranslationRule
{
    public static RuleInfo Info { get; } = new("translation-stale", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        foreach (var pair in file.Pairs.Where(p => p.Mark?.Value != p.RightMark))
            Report(file, pair, findings);
    }

    private static void Report(TranslatedFile file, PassagePair pair, FindingList findings)
    {
        var whose = $"{pair.Main.Says} of {file.Translation.Of.Value}";
        var putRight = $"Read both. When the translation says what the original says, write `original: {pair.RightMark}` {(pair.Main.Says.StartsWith("step", StringComparison.Ordinal) ? "in it" : "under it")}.";
        findings.Add(
            Info,
            pair.Mark?.At ?? pair.At,
            pair.Mark is { } mark
                ? $"The words of {whose} have changed since they were translated: their mark is {pair.RightMark}, not {Say.Short(mark.Value)}."
                : Say.Capital($"{whose} is translated, and nothing says which words it was made from."),
            "What was changed in the original may be the very thing that keeps a hand out of the stack, and this crew would not read it.",
            putRight,
            new FurtherPlace(pair.Main.At, $"it now says: {Say.Short(string.Join(" ", pair.Main.Texts))}"));
    }
}
