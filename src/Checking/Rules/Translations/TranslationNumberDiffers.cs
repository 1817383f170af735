using Witnessmark.Checking.Wording;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>Translated words have a number or a unit that the original has not, or lack one.</summary>
public sealed class TranslationNumberDiffers : ITranslationRule
{
    public static RuleInfo Info { get; } = new("translation-number-differs", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        // what is not translated yet has its numbers in the words of the original
        foreach (var (original, own) in file.Settled.SelectMany(p => p.Each).Where(e => TranslationUntouched.In(e.Original, e.Own).IsEmpty))
            Compare(file, Say.Capital($"{original.Says} of {file.Translation.Of.Value}"), original.Texts, own.Texts, original.At, own.At, findings);
        foreach (var pair in file.Translation.Names.Concat(file.Translation.Texts))
            Compare(file, $"“{Say.Short(pair.From.Value)}”", [pair.From.Value], [pair.To.Value], null, pair.To.At, findings);
    }

    private static void Compare(TranslatedFile file, string what, IEnumerable<string> original, IEnumerable<string> own, Location? originalAt, Location ownAt, FindingList findings)
    {
        var (there, here) = (original.SelectMany(t => NumbersInWords.Of(t, !file.IsSpanish)).ToList(), own.SelectMany(t => NumbersInWords.Of(t, file.IsSpanish)).ToList());
        var (missing, extra) = (Without(there, here), Without(here, there));
        if (missing.Count + extra.Count == 0)
            return;
        findings.Add(
            Info,
            ownAt,
            missing.Count == 0 ? $"{what} has no {Say.Or(extra)}; its translation has."
                : extra.Count == 0 ? $"{what} has {Say.And(missing)}; its translation has not."
                : $"{what} has {Say.And(missing)}; its translation has {Say.And(extra)} instead.",
            "Both crews must read the same number in the same unit. It is written with a decimal point in every language, as on the gauge.",
            "Write the numbers of the original. A number may be a digit or a word: ten, 10, diez.",
            originalAt is { } at ? [new FurtherPlace(at, "the original")] : []);
    }

    /// <summary>What one list has more often than the other.</summary>
    private static List<string> Without(List<string> all, List<string> taken)
    {
        var rest = all.ToList();
        foreach (var number in taken)
            rest.Remove(number);
        return rest;
    }
}
