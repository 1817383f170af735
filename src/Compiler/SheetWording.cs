using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Records.Hashing;
using Witnessmark.Rendering;

namespace Witnessmark.Compiler;

/// <summary>A procedure in the words of one language, as its sheet prints it.</summary>
/// <param name="Scope">With the words of that language in it; facts and numbers are those of the original.</param>
/// <param name="Words">The sheet's own words.</param>
/// <param name="Hash">Of the translated words; null in the procedure's own language.</param>
internal sealed record SheetWording(Scope Scope, Words Words, string? Hash)
{
    public bool IsTranslated => Hash is not null;

    /// <summary>In its own language, and in each into which it is translated to the end.</summary>
    public static IEnumerable<SheetWording> All(Bench bench, Procedure procedure) =>
        SheetTranslations.LanguagesOf(bench.Library, procedure).Select(l => Translated(bench, procedure, l)).OfType<SheetWording>().Prepend(Own(bench, procedure));

    public static SheetWording Own(Bench bench, Procedure procedure) =>
        new(bench.Library.ScopeOf(procedure), Words.Of(SheetTranslations.LanguageOf(bench.Library, procedure)), null);

    /// <param name="language">Null for its own; any other must be one that it is translated into to the end.</param>
    public static SheetWording In(string? language, Bench bench, Procedure procedure) =>
        language is null || language == SheetTranslations.LanguageOf(bench.Library, procedure) ? Own(bench, procedure) : Translated(bench, procedure, language)!;

    /// <summary>Null when a word is missing or anything is found in one of the files: such a translation is not printed.</summary>
    public static SheetWording? Translated(Bench bench, Procedure procedure, string language)
    {
        var translations = SheetTranslations.Of(bench.Library.ScopeOf(procedure), language);
        var files = translations.All.Select(t => t.Source.Path).ToImmutableHashSet(StringComparer.Ordinal);
        if (!translations.Missing.IsEmpty || bench.Findings.Any(f => files.Contains(f.At.Source.Path)) || translations.Unknown.Any())
            return null;
        var library = translations.Library;
        return new SheetWording(library.ScopeOf(library.Procedure(procedure.Id.Value)!), Words.Of(language), WordsHash.Of(translations).Hex);
    }
}
