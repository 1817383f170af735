using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading;

namespace Witnessmark.Compiler;

/// <summary>Drafts a procedure; whether it compiles is for <see cref="Pipeline.Draft"/> to see.</summary>
internal static class Drafting
{
    private const string FirstMachine = "machine-1";
    private const string FirstAuthor = "AB";
    private const int LongestTitle = 80;

    public static DraftedFiles Draft(IReadOnlyList<RawFile> files, NewProcedure wanted)
    {
        if (wanted.Author is { } author && (author.Length is 0 or > 8 || !author.All(char.IsAsciiLetterOrDigit)))
            return DraftedFiles.Refused($"{author} are no initials.", "--author takes up to eight letters.");
        if (wanted.Title.Trim().Length is 0 or > LongestTitle || wanted.Title.Any(char.IsControl))
            return DraftedFiles.Refused("That title does not fit on a sheet.", $"--title takes one line of up to {LongestTitle} signs.");
        return files.Count == 0 ? FirstOfAll(wanted) : InWorkshop(files, wanted);
    }

    private static DraftedFiles FirstOfAll(NewProcedure wanted)
    {
        var machine = wanted.Machine ?? FirstMachine;
        if (StepName.Slug(machine) != machine)
            return DraftedFiles.Refused($"{machine} is no name for a data sheet.", "--machine takes small letters, digits and hyphens, like okr-34.");
        return new DraftedFiles(
            [
                OutputFile.Of("workshop.yaml", Rendering.Drafts.Draft.Workshop(wanted.Author ?? FirstAuthor)),
                OutputFile.Of($"{machine}.yaml", Rendering.Drafts.Draft.Machine(machine)),
                Procedure(wanted, machine, "from 0001", "en", wanted.Author ?? FirstAuthor),
            ],
            Refusal: null);
    }

    private static DraftedFiles InWorkshop(IReadOnlyList<RawFile> files, NewProcedure wanted)
    {
        var library = WorkshopReader.Read(files, new FindingList());
        if (library.Procedure(wanted.Id) is { } there)
            return DraftedFiles.Refused($"{wanted.Id} is there already: {there.Source.Path}.", "Take another id.");
        var names = library.Machines.Names.ToList();
        if (wanted.Machine is { } named && library.Machines.Find(named) is null)
            return DraftedFiles.Refused($"There is no data sheet {named}.", NearMiss.Of(named, names) is { } near ? $"Did you mean {near}?" : $"There are {string.Join(", ", names)}.");
        if (wanted.Machine is null && names.Count != 1)
            return DraftedFiles.Refused($"The workshop has {names.Count} data sheets.", names.Count == 0 ? "Write one first." : $"Name one with --machine: {string.Join(", ", names)}.");
        var machine = library.Machines.Find(wanted.Machine ?? names[0])!;
        var serials = machine.Serials?.Value.ToString() ?? "from 0001";
        var author = wanted.Author ?? library.Workshop.People.Names.FirstOrDefault() ?? FirstAuthor;
        return new DraftedFiles([Procedure(wanted, machine.Id.Value, serials, library.Workshop.Language?.Value ?? "en", author)], Refusal: null);
    }

    private static OutputFile Procedure(NewProcedure wanted, string machine, string serials, string language, string author) =>
        OutputFile.Of($"{wanted.Id}.md", Rendering.Drafts.Draft.Procedure(wanted.Id, wanted.Title.Trim(), language, machine, serials, author));
}
