using Witnessmark.Compiler;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Reading.Facts;
using Witnessmark.Reading.FrontMatter;
using Witnessmark.Reading.Records;
using Witnessmark.Reading.Shapes;
using Witnessmark.Reading.Sheets;
using Witnessmark.Reading.Translations;
using static Witnessmark.House.Tests.Documents.MarkdownTable;

namespace Witnessmark.House.Tests.Documents;

/// <summary>The page <c>site/pages/reference.md</c>, written from what the program itself reads by.</summary>
internal static class LanguageReference
{
    public static readonly (string Heading, string What, Choice Keys)[] Files =
    [
        ("Front matter", "The head of a procedure or job, between its two lines of dashes.", FrontMatterReader.Shape),
        ("Workshop file", "`workshop.yaml`, at the root of a workshop.", WorkshopSheet.Shape),
        ("Data sheet", "What all procedures for one machine share.", MachineSheet.Shape),
        ("Tool list", "What is on one truck or in one shop.", ToolSheet.Shape),
        ("Sign-off", "What came back from the field; how it is filled in stands on [its page](sign-off.md).", SignOffReader.Shape),
        ("Translation", "Words of a file in another language; of a procedure it is the front matter.", TranslationReader.Shape),
        ("Register", "`register.yaml`: commands write it, people read it.", RegisterSheet.Shape),
    ];

    private const string Beginning =
        """
        # The language, word by word

        Every fact, key, unit and rule, from the program's own tables. What they are for and how they work together is told in [the language](language.md), words of the
        trade in [the glossary](glossary.md). Nobody writes this page by hand: a test holds it equal to the program.

        A quantity is a number with its unit, `235 N·m`; a range is `2.8 to 3.6 mm`, `below 4.60 mm` or `from 10 cycles`. A name is letters, digits and hyphens.
        """;

    public static string Write() => string.Join('\n',
    [
        Beginning, "", Contents, "",
        "## Facts", "", .. Facts(),
        "## Verbs", "", "What a verb brings about. Nobody writes it down beside it.", "", .. Verbs(), "",
        "## Signal words", "", .. SignalWords(), "",
        .. KeysOfFiles(),
        "## Units", "", "A unit that is not here is not read. Behind it stands how people spell it, and the unit that is printed beside it in the other system.", "", .. Units(), "",
        "## Rules", "", "A **fault** holds a sheet up, a **query** asks somebody to look, a **remark** is worth knowing. `witnessmark rule NAME` tells a rule with its reasons, wrong and right.", "", .. Rules(),
    ]);

    private static string Contents => string.Join(" · ", Files.Select(f => f.Heading).Prepend("Signal words").Prepend("Verbs").Prepend("Facts").Append("Units").Append("Rules")
        .Select(heading => $"[{heading}](#{StepName.Slug(heading)})"));

    private static IEnumerable<string> Facts() => FactWords.All
        .GroupBy(f => f.Place)
        .OrderBy(g => g.Key switch { FactPlace.Heading => 0, FactPlace.Heading | FactPlace.Step => 1, _ => g.Key.HasFlag(FactPlace.Step) ? 2 : 3 })
        .GroupBy(g => Where(g.Key), g => g.AsEnumerable())
        .SelectMany(g => (string[])[$"### {g.Key}", "", .. Of(["fact", "says", "value", "example"], g.SelectMany(f => f).OrderBy(f => FactWords.All.IndexOf(f)).Select(Fact)), ""]);

    private static string[] Fact(FactRow fact) =>
        [Typed(fact.Spelling), fact.Means, fact.Often ? $"{fact.Says}; one a line" : fact.Says, Typed($"- {fact.Spelling}: {FactExamples.Of(fact.Word)}")];

    private static string Where(FactPlace place) => place switch
    {
        FactPlace.Heading => "Under a heading",
        FactPlace.Heading | FactPlace.Step => "Under a heading or in a step",
        FactPlace.TranslatedHeading | FactPlace.TranslatedStep => "In a translation only",
        _ => "In a step",
    };

    private static IEnumerable<string> Verbs() => Of(["verb", "is then"], FactWords.All
        .Where(f => ImpliedValues.Of(f.Word) is not null)
        .Select(f => new[] { Typed(f.Spelling), Typed(ImpliedValues.Of(f.Word)!) }));

    private static IEnumerable<string> SignalWords() => Of(["word", "in Spanish", "`signal-words`", "for"], new[] { (SignalScheme.AnsiZ535, "ANSI Z535"), (SignalScheme.Military, "military") }
        .SelectMany(s => s.Item1.Words().Select(w => new[]
        {
            Spoken(w, SheetLanguages.English), Spoken(w, SheetLanguages.Spanish), s.Item2, s.Item1.IsForPeople(w) ? "people" : w == SignalWord.Note ? "what else must be known" : "the machine",
        })));

    private static string Spoken(SignalWord word, string language) => SheetLanguages.Signal(word, language);

    private static IEnumerable<string> KeysOfFiles()
    {
        var tables = new KeyTables();
        return Files.SelectMany(f => (string[])[$"## {f.Heading}", "", f.What, "", .. tables.Of(f.Keys)]);
    }

    private static IEnumerable<string> Units() => Of(["measures", "unit", "is read too", "beside it"], UnitTable.All
        .Select(u => new[] { u.Kind, Typed(u.Symbol), string.Join(", ", u.Spellings.Select(Typed)), u.Beside is { } beside ? Typed(beside) : "" }));

    private static IEnumerable<string> Rules() => Catalog.Rules
        .GroupBy(r => r.Topic)
        .SelectMany(g => (string[])[$"### {g.Key}", "", .. Of(["rule", "severity", "checks"], g.Select(r => new[] { Typed(r.Name), r.Severity.Word(), Catalog.Summary(r.Name) })), ""]);
}
