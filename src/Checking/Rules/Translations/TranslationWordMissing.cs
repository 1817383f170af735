using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>The translated sheet would print names or texts of the data that no file gives in its language.</summary>
public sealed class TranslationWordMissing : ITranslationRule
{
    private const int Shown = 3;

    public static RuleInfo Info { get; } = new("translation-word-missing", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        if (file.Procedure is not { } procedure)
            return;
        var missing = SheetTranslations.Of(file.Library.ScopeOf(procedure), file.Translation.Language.Value).Unknown.ToList();
        if (missing.Count == 0)
            return;
        findings.Add(
            Info,
            file.Translation.Of.At,
            $"The sheet of {procedure.Id.Value} prints {Say.Count(missing.Count, "word or text", "words or texts")} that nobody has put into {file.Language}: {Say.Some(missing.Select(w => $"“{Say.Short(w.Key)}”"))}.",
            "A sheet in two languages is read in one: whoever does not know the word goes by what he thinks it says. So it is not printed.",
            PutRight(missing),
            [.. missing.Take(Shown).Select(w => new FurtherPlace(w.At, $"“{Say.Short(w.Key)}”"))]);
    }

    private static string PutRight(List<SheetWord> missing)
    {
        var name = missing.Find(w => !w.IsText);
        var text = missing.Find(w => w.IsText);
        return string.Join(" ", new[]
        {
            name is null ? "" : $"Write names under `names:`, like `{name.Key}: …`.",
            text is null ? "" : "Write texts under `texts:`, each as the original and its translation, like `{en: …, es: …}`.",
            "A word belongs into the translation of the file that it stands in.",
        }.Where(t => t.Length > 0));
    }
}
