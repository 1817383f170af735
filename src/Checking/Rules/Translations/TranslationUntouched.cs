using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>A title, heading, message or step of the translation still has the words of the original.</summary>
public sealed class TranslationUntouched : ITranslationRule
{
    // shorter texts may read alike in two languages
    private const int Enough = 3;
    private const int EnoughOfAll = 2;
    private const int Letters = 3;

    public static RuleInfo Info { get; } = new("translation-untouched", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        if (file.Procedure is not { } procedure)
            return;
        var original = SheetLanguages.Spoken(SheetTranslations.LanguageOf(file.Library, procedure));
        foreach (var pair in file.Settled)
            if (pair.Each.SelectMany(e => In(e.Original, e.Own).Take(1).Select(text => (e.Own, Text: text))).ToList() is [var first, .. var more])
                findings.Add(
                    Info,
                    first.Own.At,
                    $"{Say.Capital(first.Own.Says)} of {procedure.Id.Value} is not translated into {file.Language} yet: “{Say.Short(first.Text)}”.",
                    $"Who does not read {original} would go by what he thinks it says. So the translated sheet is not printed.",
                    "Write the words over; numbers, marks and places to fill in stay.",
                    [.. more.Select(m => new FurtherPlace(m.Own.At, $"nor is {m.Own.Says}"))]);
    }

    /// <summary>Texts of a passage that are still the original's.</summary>
    public static ImmutableArray<string> In(Passage original, Passage own)
    {
        if (own.Texts.SequenceEqual(original.Texts) && own.Texts.Sum(Words) >= EnoughOfAll)
            return [own.Texts[0]];
        return [.. own.Texts.Where(t => Words(t) >= Enough && original.Texts.Contains(t))];
    }

    // tags, units and what a parameter stands for are the same everywhere
    private static int Words(string text) =>
        text.Split(' ').Count(w => !w.Contains('{', StringComparison.Ordinal) && w.Count(char.IsLetter) >= Letters);
}
