using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Translations;

internal static class TranslationFindings
{
    private const string Why = "A translation gives words alone. A number or an order that stood in two files could differ, and the crew that reads the other language would do other work.";

    public static Finding NotWords(FactRow row, Located<string> key) => NotWords(key, row.Place.HasFlag(FactPlace.TranslatedStep)
        ? "In a translation it stands in the step that it belongs to, indented by four."
        : "Take the line out: the sheet takes it from the original. In a step stand only call, answer, hold and the mark of the original.");

    public static Finding NotWords(Located<string> key) => NotWords(key, "Take the line out: the sheet takes it from the original.");

    public static Finding Twice(Translation again, Translation first) => new(
        TranslationFaults.TranslationTwice,
        again.Of.At,
        $"{again.Of.Value} is translated into {SheetLanguages.Spoken(again.Language.Value)} twice; {first.Source.Path} does it already.",
        "Two crews could work from two wordings of one version, and nobody could say which was meant.",
        "Keep one of the two files.")
    {
        Further = [new FurtherPlace(first.Of.At, "the first one")],
    };

    private static Finding NotWords(Located<string> key, string putRight) => new(
        TranslationFaults.TranslationNotWords,
        key.At,
        $"`{Say.Short(key.Value)}` is a fact of the work, and this file is a translation.",
        Why,
        putRight);
}
