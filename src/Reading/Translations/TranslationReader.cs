using System.Collections.Immutable;
using Markdig.Syntax;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Steps;

namespace Witnessmark.Reading.Translations;

/// <summary>
/// Reads a translation: of a procedure as Markdown with the same headings and step numbers, of data as texts alone. What is
/// no text in it is a finding; nothing in it is read as a number.
/// </summary>
internal static class TranslationReader
{
    public const string Key = "translates";

    private const string Example = "{friction-disc: disco de fricción}";

    /// <summary>A translation without steps; null when it does not say of what, into what.</summary>
    public static Translation? Read(SourceText source, DataMap map, FindingList findings)
    {
        var fields = new Fields(map, "the translation", findings);
        var of = fields.Id(Key, "WB-60");
        var language = fields.OneOf("language", SheetLanguages.All);
        if (of is null || language is null)
        {
            fields.Needs(Key, "language");
            return null;
        }
        var translation = new Translation(source, of.Value, language.Value, map)
        {
            Title = fields.Text("title", "Pasos de apriete"),
            Translators = fields.List("translators", "[TV]"),
            Compared = Compared(fields),
            Names = Pairs(fields.Below("names", "`names`", Example)),
            Texts = [.. fields.Members("texts", "{en: take a new one, es: tome uno nuevo}").Select(t => Pair(t, language.Value.Value)).OfType<WordPair>()],
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

    private static Comparison? Compared(Fields fields)
    {
        if (fields.Below("compared", "the comparison", "{by: RK, date: \"2031-05-03\", mark: 5C0E}") is not { } below)
            return null;
        var compared = new Comparison(below.Text("by", "RK"), below.Text("date", "\"2031-05-03\""), below.Text("mark", "5C0E"), below.Map.At);
        below.Done("by", "date");
        return compared;
    }

    private static ImmutableArray<WordPair> Pairs(Fields? names) => names is null
        ? []
        : [.. names.Map.Entries.Select(e => names.Text(e.Key.Value) is { } spoken ? new WordPair(e.Key, spoken) : null).OfType<WordPair>()];

    /// <summary><c>{en: …, es: …}</c>: the words under the translation's own language are its own.</summary>
    private static WordPair? Pair(Fields fields, string language)
    {
        var from = SheetLanguages.All.First(l => l != language);
        var pair = (From: fields.Text(from), To: fields.Text(language));
        fields.Done(from, language);
        return pair is ({ } original, { } own) ? new WordPair(original, own) : null;
    }
}
