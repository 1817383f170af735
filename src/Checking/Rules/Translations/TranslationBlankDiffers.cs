using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Translations;

/// <summary>What is called, answered or held for is missing in the translation, is no words of its own, or has other blanks.</summary>
public sealed class TranslationBlankDiffers : ITranslationRule
{
    public static RuleInfo Info { get; } = new("translation-blank-differs", "Translations", Severity.Query);

    public static void Check(TranslatedFile file, FindingList findings)
    {
        foreach (var (original, own) in file.SettledSteps)
            foreach (var word in new[] { FactWord.Call, FactWord.Answer, FactWord.Hold })
                Compare(file, word, original, own, findings);
        foreach (var pair in file.Translation.Texts)
            Compare($"“{Say.Short(pair.From.Value)}”", pair.From, pair.To, null, findings);
    }

    private static void Compare(TranslatedFile file, FactWord word, Step original, Step own, FindingList findings)
    {
        var what = $"`{word.Spelled()}` of step {Say.Number(original.Number)} of {file.Translation.Of.Value}";
        switch (SpokenIn(file, original, word), own.Find(word))
        {
            case ({ } there, { } here):
                Compare(what, there.Text, here.Text, there.At, findings);
                break;
            case ({ } there, null):
                Report(own.Name.At, $"{what} is not translated.", $"Add `{word.Spelled()}:` to the step with what is said there: “{Say.Short(there.Text.Value)}”.", there.At, findings);
                break;
            case (null, { } here):
                Report(here.At, $"{what} is no text of that step.", "Take the line out. The words of a call that has a name are translated once, under `texts:` of the workshop.", original.Name.At, findings);
                break;
        }
    }

    private static void Compare(string what, Located<string> original, Located<string> own, Location? originalAt, FindingList findings)
    {
        var (there, here) = (Blanks(original.Value), Blanks(own.Value));
        if (there != here)
            Report(own.At, $"{what} has {Say.Count(there, "blank")}; its translation has {Say.Number(here)}.", "Write `___` wherever a value is filled in.", originalAt, findings);
    }

    // the name of a call is no words: those stand in the workshop file
    private static Fact? SpokenIn(TranslatedFile file, Step step, FactWord word) =>
        step.Find(word) is { } fact && (word != FactWord.Call || file.Library.ScopeOf(file.Procedure!).Call(fact.Text.Value) is null) ? fact : null;

    private static int Blanks(string text) => text.Split("___").Length - 1;

    private static void Report(Location at, string found, string putRight, Location? original, FindingList findings) => findings.Add(
        Info,
        at,
        found,
        "A blank is a box: with one less, a value that was asked for is not written down, and nobody sees that it is missing.",
        putRight,
        original is { } there ? [new FurtherPlace(there, "the original")] : []);
}
