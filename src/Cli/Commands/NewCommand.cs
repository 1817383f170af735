using System.CommandLine;
using System.Text.RegularExpressions;
using Witnessmark.Cli.Disk;
using Witnessmark.Compiler;
using Witnessmark.Language.Text;

namespace Witnessmark.Cli.Commands;

/// <summary><c>new</c>: a procedure that compiles, to write on from. In a folder without a workshop it starts one.</summary>
internal static partial class NewCommand
{
    public static Command Make(Surroundings around)
    {
        var id = new Argument<string>("id") { Description = "Id of the new procedure: letters, a hyphen, digits: WB-90." };
        var title = new Option<string>("--title") { Description = "What the job is, in the imperative.", HelpName = "text", DefaultValueFactory = _ => "Name the job" };
        var machine = new Option<string?>("--machine") { Description = "The data sheet it is for; the only one when left out.", HelpName = "name" };
        var author = new Option<string?>("--author") { Description = "Initials of who writes it; the first person of the workshop when left out.", HelpName = "initials" };
        var within = CommonOptions.In();
        var output = new Option<string?>("--out") { Description = "Folder in the workshop for the file; the workshop's own when left out.", HelpName = "folder" };
        var language = new Option<string?>("--translate") { Description = "Start the translation of a procedure that is there, beside it; --author is then who translates.", HelpName = "en|es" };
        var command = new Command("new", "Start a procedure that compiles; in an empty folder, a workshop too. Or start a translation.") { id, title, machine, author, language, within, output };
        command.SetAction(parsed => parsed.GetValue(language) is { } into ? Translate(
            new NewTranslation(parsed.GetValue(id)!, into, parsed.GetValue(author)),
            new Option[] { title, machine, output }.FirstOrDefault(o => parsed.GetResult(o) is { Implicit: false })?.Name, parsed.GetValue(within), around) : Run(
            new NewProcedure(parsed.GetValue(id)!, parsed.GetValue(title)!, parsed.GetValue(machine), parsed.GetValue(author)),
            parsed.GetValue(within), parsed.GetValue(output), around));
        return command;
    }

    private static int Run(NewProcedure wanted, string? within, string? output, Surroundings around)
    {
        if (!IdForm().IsMatch(wanted.Id))
            throw new RefusedException($"{wanted.Id} is no id.", "Use letters, a hyphen and digits, like WB-90.");
        var (folder, shown, files) = Workshop(within, null, around);
        var drafted = Pipeline.Draft(files, wanted);
        if (drafted.Refusal is { } refusal)
            throw new RefusedException(refusal.What, refusal.Todo);
        var target = output is null ? folder : around.FullPath(output);
        if (target != folder && !target.StartsWith(folder + Path.DirectorySeparatorChar, StringComparison.Ordinal))
            throw new RefusedException($"{output} is outside the workshop {shown}.", "Name a folder inside it with --out.");
        var inside = Path.GetRelativePath(folder, target);
        IReadOnlyList<OutputFile> placed = [.. drafted.Files.Select(f => f.Path == WorkshopFolder.RootFile || inside == "." ? f : f with { Path = $"{inside}/{f.Path}" })];
        OutputFolder.Add(folder, shown, placed);
        foreach (var file in placed)
            around.Out.WriteLine($"Wrote {Path.Combine(shown, file.Path).Replace('\\', '/')}.");
        around.Out.WriteLine($"It compiles as it stands. Write on, then: witnessmark check {shown}");
        return ExitCode.Clean;
    }

    /// <param name="idle">An option that says nothing of a translation, or null.</param>
    private static int Translate(NewTranslation wanted, string? idle, string? within, Surroundings around)
    {
        if (idle is not null)
            throw new RefusedException($"{idle} says nothing of a translation.", "It stands beside its original and takes title and machine from it. Leave the option out.");
        var (folder, shown, files) = Workshop(within, wanted.Procedure, around);
        var drafted = Pipeline.DraftTranslation(files, wanted);
        if (drafted.Refusal is { } refusal)
            throw new RefusedException(refusal.What, refusal.Todo);
        OutputFolder.Add(folder, shown, drafted.Files);
        foreach (var file in drafted.Files)
            around.Out.WriteLine($"Wrote {Path.Combine(shown, file.Path).Replace('\\', '/')}.");
        around.Out.WriteLine($"Write over its words; numbers and marks stay. What is not translated yet: witnessmark check {shown}");
        return ExitCode.Clean;
    }

    /// <summary>The workshop that is there, or a folder to start one in: only the one that was named.</summary>
    /// <param name="original">A procedure that has to be there, or null.</param>
    private static (string Folder, string Shown, IReadOnlyList<RawFile> Files) Workshop(string? within, string? original, Surroundings around)
    {
        var full = around.FullPath(within ?? ".");
        if (within is not null && (!Directory.Exists(full) || !Directory.EnumerateFileSystemEntries(full).Any()))
            return (full, within, []);
        var found = original is null ? Premises.One(within, around) : Premises.WithProcedure(original, within, around);
        return (found.FullPath, found.Shown.Length == 0 ? "." : found.Shown, found.Files());
    }

    [GeneratedRegex("^[A-Za-z]{1,12}-[0-9]{1,6}\\z")]
    private static partial Regex IdForm();
}
