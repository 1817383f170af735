using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;
using Witnessmark.Reading.Translations;

namespace Witnessmark.Reading.Facts;

/// <summary>What can be wrong with a fact before its value is looked at.</summary>
internal static class FactFindings
{
    public static Finding Unknown(Bullet bullet)
    {
        var key = bullet.Key!.Value;
        return new Finding(
            StepFaults.FactUnknown,
            key.At,
            $"`{key.Value}` is not a fact.",
            "What stands behind an unknown word is neither checked nor counted, and nobody notices.",
            bullet.NearestFact is { } near
                ? $"Did you mean `{near}: {bullet.Value!.Value.Value}`?"
                : $"If it is a remark for the crew, write it without the colon behind `{key.Value}`. The facts are listed in the language reference.")
        {
            Correction = Correction.Respelled(new Located<string>(key.At.Text, key.At), FactWords.All.Select(r => r.Spelling)),
        };
    }

    public static Finding Note(Bullet bullet)
    {
        var key = bullet.Key!.Value;
        return new Finding(
            StepFaults.NoteBullet,
            key.At,
            $"A bullet begins with `{key.Value}:`.",
            "A warning in the list under a step is read after the work, if at all.",
            $"If someone can be hurt or something spoiled, write a message before the step: `> **NOTICE: {Ending(bullet.Value!.Value.Value)}**`. If not, write it as text of the step.");
    }

    public static Finding Misplaced(FactRow row, Located<string> key, FactPlace place)
    {
        if (row.Word == FactWord.Original)
            return InNoTranslation(key);
        if (place is FactPlace.TranslatedHeading or FactPlace.TranslatedStep)
            return TranslationFindings.NotWords(row, key);
        var (here, there) = place == FactPlace.Step ? ("in a step", "under a heading, before its first step") : ("under a heading", "in a step, indented by four");
        return new Finding(
            StepFaults.FactMisplaced,
            key.At,
            $"`{row.Spelling}` stands {here}; it belongs {there}.",
            "In the wrong place a fact says something about other work than was meant.",
            $"Move the line: it says {row.Says}.");
    }

    private static Finding InNoTranslation(Located<string> key) => new(
        StepFaults.FactMisplaced,
        key.At,
        "`original` stands in a procedure; it belongs in a translation.",
        "In the wrong place a fact says something about other work than was meant.",
        "Take the line out, or begin the front matter with `translates:` if this file translates another one.");

    public static Finding Empty(FactRow row, Located<string> key) => new(
        StepFaults.FactUnclear,
        key.At,
        $"`{row.Spelling}:` has nothing behind it.",
        "A fact without a value looks filled in and says nothing.",
        $"Write {row.Says}, like this: `{row.Spelling}: {FactExamples.Of(row.Word)}`. Or take the line out.");

    public static Finding Broken(FactRow row, Located<string> value) => new(
        StepFaults.FactBroken,
        value.At,
        $"`{row.Spelling}` runs over more than one line.",
        "One fact is one line, so that a comparison of two versions reads like a list of changes.",
        "Join the lines, or say it in fewer words.");

    public static Finding Nowhere(Location at) => new(
        StepFaults.FactMisplaced,
        at,
        "These facts stand under no heading and in no step.",
        "Nobody can tell what they hold for, so they would hold for nothing.",
        "Under a heading they stand before its first step; in a step they are indented by four.");

    public static Finding NoStepUnderTitle(Fact fact) => new(
        StepFaults.FactMisplaced,
        fact.At,
        $"`{fact.Word.Spelled()}` stands under the title, and no step does: all steps are in parts.",
        "Each part is done at its own time and has a contract of its own; this one would hold for nothing.",
        "Move the line under the `# Part:` that it is meant for.");

    public static Finding Remark(Bullet bullet) => new(
        StepFaults.FactUnknown,
        bullet.At,
        $"`{Say.Short(bullet.At.Text)}` stands among the facts of a heading and is none.",
        "The list under a heading is the contract; what is no fact in it would not be printed.",
        "If it is text, write it as a paragraph. If it is a fact, write `key: value`.");

    public static Finding Twice(Fact again, Fact first)
    {
        var word = again.Word.Spelled();
        return new Finding(
            StepFaults.FactTwice,
            again.At,
            $"`{word}` stands here twice: `{first.Text.Value}` and `{again.Text.Value}`.",
            "Two answers to one question: whoever reads only the first does other work than whoever reads the second.",
            $"Keep one line{(again.Value is NameList or Amounts ? ", with a comma between the things" : "")}.")
        {
            Further = [new FurtherPlace(first.At, "the first one")],
        };
    }

    private static string Ending(string text) => text.Length == 0 ? "…" : text.TrimEnd('.', '\n');
}
