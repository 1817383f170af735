using System.Text;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.Tests.Steps;

public sealed class TranslationTests
{
    private const string Front = "---\ntranslates: WB-60\nlanguage: es\n---\n\n# Pasos de apriete\n\n";

    [Fact]
    public void A_translation_has_words_and_marks_and_nothing_else()
    {
        var translation = Assert.Single(Read(Front + "- original: 6576\n\n> **PELIGRO: algo cae** sobre la mano.\n> - Apartarse.\n\n4. **Revisar.** Bien.\n    - original: 5AC8\n    - hold: leído ___ N·m\n").Translations);
        Assert.Equal("WB-60.es", translation.Id.Value);
        var step = Assert.Single(translation.Body!.Steps);
        Assert.Equal(4, step.WrittenNumber.Value);
        Assert.Equal(SignalWord.Danger, Assert.Single(step.Messages).Signal);
        Assert.Equal([FactWord.Original, FactWord.Hold], step.Facts.Select(f => f.Word));
        Assert.Equal("6576", Assert.Single(translation.Body.UnderTitle).Text.Value);
    }

    [Theory]
    [InlineData("    - tighten: {group}\n", "translation-not-words")]
    [InlineData("    - time: 1 min\n", "translation-not-words")]
    [InlineData("    - original: 5AC8\n    - original: 5AC8\n", "fact-twice")]
    [InlineData("\n> **PELIGRO: algo cae** sobre la mano.\n> - hazard: hung-load\n\n2. **Seguir.**\n", "translation-not-words")]
    public void A_fact_of_the_work_in_it_is_found(string lines, string rule) => Assert.Contains(rule, Found(Front + "1. **Revisar.** Bien.\n" + lines));

    [Fact]
    public void A_call_under_a_heading_is_found() => Assert.Contains("translation-not-words", Found(Front + "- call: listo\n\n1. **Revisar.** Bien.\n"));

    [Theory]
    [InlineData("language: fr", "value-not-in-list")]
    [InlineData("language: es\ntorque: 235 N·m", "key-unknown")]
    [InlineData("title: Pasos", "key-missing")]
    public void A_language_that_sheets_have_no_words_in_and_a_number_in_the_data_are_found(string lines, string rule) =>
        Assert.Contains(rule, Found($"---\ntranslates: WB-60\n{lines}\n---\n\n# Pasos\n\n1. **Revisar.** Bien.\n"));

    [Fact]
    public void The_mark_of_words_in_a_procedure_is_found() =>
        Assert.Contains("fact-misplaced", Found("---\nprocedure: WB-99\ntitle: Look\nversion: 1.0.0\nstatus: draft\nmachine: okr-34\n---\n\n# Look\n\n1. **Look.** Well.\n    - original: 3F9A\n"));

    private static Library Read(string text) => Read(text, new FindingList());

    private static IEnumerable<string> Found(string text)
    {
        var findings = new FindingList();
        Read(text, findings);
        return findings.InReadingOrder().Select(f => f.Rule.Name);
    }

    private static Library Read(string text, FindingList findings) => WorkshopReader.Read([RawFile.Of("wb-60.es.md", Encoding.UTF8.GetBytes(text))], findings);
}
