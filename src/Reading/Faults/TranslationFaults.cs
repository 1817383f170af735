using System.Collections.Immutable;
using Witnessmark.Language.Findings;

namespace Witnessmark.Reading.Faults;

/// <summary>What can be wrong with a translation as a file. Each has its page, <c>name.md</c>, beside this file.</summary>
public static class TranslationFaults
{
    public static readonly RuleInfo TranslationNotWords = new("translation-not-words", "Translations", Severity.Query);
    public static readonly RuleInfo TranslationTwice = new("translation-twice", "Translations", Severity.Query);

    public static readonly ImmutableArray<RuleInfo> All = [TranslationNotWords, TranslationTwice];
}
