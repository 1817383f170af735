using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>The rules of this topic.</summary>
internal static class TranslationsTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.OfTranslation<ComparerIsTranslator>(),
        Rule.OfTranslation<ComparisonMissing>(),
        Rule.OfTranslation<ComparisonStale>(),
        Rule.OfTranslation<ComparisonUnclear>(),
        Rule.OfTranslation<TranslationBlankDiffers>(),
        Rule.OfTranslation<TranslationForNothing>(),
        Rule.OfTranslation<TranslationHeadingMissing>(),
        Rule.OfTranslation<TranslationMessageDiffers>(),
        Rule.OfTranslation<TranslationNameTooWide>(),
        Rule.OfTranslation<TranslationNumberDiffers>(),
        Rule.OfTranslation<TranslationPerformedMissing>(),
        Rule.OfTranslation<TranslationStale>(),
        Rule.OfTranslation<TranslationStepMissing>(),
        Rule.OfTranslation<TranslationStepUnknown>(),
        Rule.OfTranslation<TranslationTextMissing>(),
        Rule.OfTranslation<TranslationUntouched>(),
        Rule.OfTranslation<TranslationWordIdle>(),
        Rule.OfTranslation<TranslationWordMissing>(),
    ];
}
