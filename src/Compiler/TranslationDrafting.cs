using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading;
using Witnessmark.Rendering.Drafts;

namespace Witnessmark.Compiler;

/// <param name="Procedure">Id of what is translated.</param>
/// <param name="Language">en or es.</param>
/// <param name="Translator">Initials, or null.</param>
public sealed record NewTranslation(string Procedure, string Language, string? Translator);

/// <summary>Drafts a translation: marks in place, the words of the original to be written over.</summary>
internal static class TranslationDrafting
{
    private const string Ending = ".md";

    public static DraftedFiles Draft(IReadOnlyList<RawFile> files, NewTranslation wanted)
    {
        var library = WorkshopReader.Read(files, new FindingList());
        if (Refused(library, wanted) is { } refusal)
            return new DraftedFiles([], refusal);
        var procedure = library.Procedure(wanted.Procedure)!;
        var path = procedure.Source.Path;
        var stem = path.EndsWith(Ending, StringComparison.OrdinalIgnoreCase) ? path[..^Ending.Length] : path;
        return new DraftedFiles([OutputFile.Of($"{stem}.{wanted.Language}{Ending}", TranslationDraft.Of(library.ScopeOf(procedure), wanted.Language, wanted.Translator))], Refusal: null);
    }

    private static Refusal? Refused(Library library, NewTranslation wanted)
    {
        // a language that sheets have no words in
        if (!SheetLanguages.All.Contains(wanted.Language))
            return new Refusal($"No sheet is printed in {wanted.Language}.", $"--translate takes {string.Join(" or ", SheetLanguages.All)}.");
        // nothing of that name
        if (library.Procedure(wanted.Procedure) is not { } procedure)
            return new Refusal($"There is no procedure {wanted.Procedure} to translate.", NearMiss.Of(wanted.Procedure, library.Procedures.Names) is { } near ? $"Did you mean {near}?" : "Leave --translate out to begin one.");
        // its own language
        if (SheetTranslations.LanguageOf(library, procedure) == wanted.Language)
            return new Refusal($"{wanted.Procedure} is written in {SheetLanguages.Spoken(wanted.Language)}.", "Name another language with --translate.");
        // done, or begun
        if (library.Translation(wanted.Procedure, wanted.Language) is { } there)
            return new Refusal($"{wanted.Procedure} has a translation into {SheetLanguages.Spoken(wanted.Language)}: {there.Source.Path}.", "It stays as it is. witnessmark check says what is missing in it.");
        // a translator that the workshop does not know
        if (wanted.Translator is { } who && library.Workshop.People.Find(who) is null)
            return new Refusal($"The workshop does not know {who}.", $"Initials are under people: in workshop.yaml: {string.Join(", ", library.Workshop.People.Names)}.");
        return null;
    }
}
