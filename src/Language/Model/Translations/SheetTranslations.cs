using System.Collections.Immutable;

namespace Witnessmark.Language.Model;

/// <summary>The files whose words a sheet prints in one language: its procedure's, those of what it performs, the data sheet's, the tools', the workshop's.</summary>
/// <param name="Missing">Ids of what has a translation into that language not yet.</param>
public sealed record SheetTranslations(Scope Scope, string Language, ImmutableArray<Translation> All, ImmutableArray<string> Missing)
{
    /// <summary>Languages into which the procedure itself is translated.</summary>
    public static IEnumerable<string> LanguagesOf(Library library, Procedure procedure) =>
        SheetLanguages.All.Where(l => l != LanguageOf(library, procedure) && library.Translation(procedure.Id.Value, l)?.Body is not null);

    /// <summary>The language that a procedure is written in.</summary>
    public static string LanguageOf(Library library, Procedure procedure) =>
        SheetLanguages.Of((procedure.Language ?? library.Workshop.Language)?.Value);

    public static SheetTranslations Of(Scope scope, string language)
    {
        string[] data = [.. scope.Machine is { } machine ? [machine.Id.Value] : Array.Empty<string>(), .. scope.ToolLists.Select(t => t.Id.Value), Translation.WorkshopName];
        var steps = Performed(scope.Library, scope.Procedure, []).Select(p => p.Id.Value).ToList();
        return new SheetTranslations(
            scope,
            language,
            [.. steps.Concat(data).Select(id => scope.Library.Translation(id, language)).OfType<Translation>()],
            [.. steps.Where(id => scope.Library.Translation(id, language)?.Body is null)]);
    }

    public Tongue Tongue => new(Language, All.SelectMany(t => t.Names), All.SelectMany(t => t.Texts));

    /// <summary>Words that the sheet prints and no file gives.</summary>
    public IEnumerable<SheetWord> Unknown
    {
        get
        {
            var tongue = Tongue;
            return SheetWords.Of(Scope).Where(w => !tongue.Knows(w));
        }
    }

    /// <summary>The library as the sheet prints it: the same facts and numbers, other words.</summary>
    public Library Library => Scope.Library with
    {
        Tongue = Tongue,
        Procedures = new Items<Procedure>(Scope.Library.Procedures.Select(p => All.FirstOrDefault(t => t.Of.Value == p.Id.Value) is { } words ? TranslatedProcedure.Of(p, words) : p)),
    };

    /// <summary>The procedure and all that it performs, each once.</summary>
    private static IEnumerable<Procedure> Performed(Library library, Procedure procedure, HashSet<string> seen)
    {
        if (!seen.Add(procedure.Id.Value))
            return [];
        var performed = procedure.Steps.SelectMany(s => s.All(FactWord.Perform)).Select(f => f.Value).OfType<PerformValue>()
            .Select(p => library.Procedure(p.Procedure.Value)).OfType<Procedure>();
        return [procedure, .. performed.SelectMany(p => Performed(library, p, seen))];
    }
}
