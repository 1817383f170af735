using System.Collections.Immutable;
using Markdig.Syntax;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Shapes;
using Witnessmark.Reading.Steps;

namespace Witnessmark.Reading.Translations;

/// <summary>
/// Reads a translation: of a procedure as Markdown with the same headings and step numbers, of data as texts alone. What is
/// no text in it is a finding; nothing in it is read as a number.
/// </summary>
internal static class TranslationReader
{
    public const string Key = "translates";

    private static readonly Shape ComparedShape = new(
        "compared",
        "the comparison",
        Row.Text("by", "RK", "who read both languages side by side").Must,
        Row.Text("date", "\"2031-05-03\"", "the day").Must,
        Row.Text("mark", "5C0E", "of the safety words that were compared"));

    private static readonly Shape NamesShape = new("translated-names", "`names`")
    {
        Other = Row.Text("friction-disc", "disco de fricción", "how the name is spoken"),
    };

    /// <summary>The words under the translation's own language are its own, those under the other are the original's.</summary>
    private static readonly Shape PairShape = new("word-pair", "a pair of texts", [.. SheetLanguages.All.Select(language => Row.Text(language, "take a new one", "in this language").Must)]);

    public static readonly Shape Shape = new(
        "translation",
        "the translation",
        Row.Id(Key, "WB-60", "what it translates").Must,
        Row.Word("language", SheetLanguages.All, "into which language").Must,
        Row.Text("title", "Pasos de apriete", "the title, translated"),
        Row.List("translators", "[TV]", "initials of who translated it"),
        Row.Below("compared", ComparedShape, "{by: RK, date: \"2031-05-03\", mark: 5C0E}", "who has compared it with the original"),
        Row.Below("names", NamesShape, "{friction-disc: disco de fricción}", "declared names as they are spoken"),
        Row.Members("texts", PairShape, "{en: take a new one, es: tome uno nuevo}", "texts of the data, each beside its original"));

    /// <summary>A translation without steps; null when it does not say of what, into what.</summary>
    public static Translation? Read(SourceText source, DataMap map, FindingList findings)
    {
        var fields = new Fields(map, Shape, findings);
        var of = fields.Text(Key);
        var language = fields.Text("language");
        if (of is null || language is null)
        {
            fields.NeedsAll();
            return null;
        }
        var translation = new Translation(source, of.Value, language.Value, map)
        {
            Title = fields.Text("title"),
            Translators = fields.List("translators"),
            Compared = Compared(fields),
            Names = Pairs(fields.Below("names")),
            Texts = [.. fields.Members("texts").Select(t => Pair(t, language.Value.Value)).OfType<WordPair>()],
        };
        fields.Done();
        return translation;
    }

    /// <summary>With the text of a procedure below its front matter.</summary>
    public static Translation? Read(SourceText source, DataMap map, MarkdownDocument? text, int start, FindingList findings)
    {
        if (Read(source, map, findings) is not { } translation || text is null)
            return null;
        var body = BodyReader.Read(text, source, start, TextKind.Translation(translation.Language.Value), findings);
        return translation with { Body = new TranslatedBody(body.Title, body.UnderTitle, body.Introduction, body.Parts) };
    }

    private static Comparison? Compared(Fields fields) =>
        fields.Below("compared") is { } below ? new Comparison(below.Text("by"), below.Text("date"), below.Text("mark"), below.Map.At) : null;

    private static ImmutableArray<WordPair> Pairs(Fields? names) => names is null
        ? []
        : [.. names.Map.Entries.Select(e => names.Text(e.Key.Value) is { } spoken ? new WordPair(e.Key, spoken) : null).OfType<WordPair>()];

    private static WordPair? Pair(Fields fields, string language) =>
        fields.Text(SheetLanguages.All.First(l => l != language)) is { } original && fields.Text(language) is { } own ? new WordPair(original, own) : null;
}
