using System.CommandLine;
using Witnessmark.Cli.Disk;
using Witnessmark.Compiler;
using Witnessmark.Language.Model;

namespace Witnessmark.Cli.Commands;

/// <summary>What the commands have in common that add a line to the register.</summary>
internal static class PutOnRecord
{
    /// <summary>A command about one copy: what became of it.</summary>
    public static Command OfCopy(string name, string description, CopyEnd end, Surroundings around)
    {
        var mark = new Argument<string>("mark") { Description = "The three signs in the corner of its pages: K7M." };
        var (by, why, within) = (By(), Why(), CommonOptions.In());
        var command = new Command(name, description) { mark, by, why, within };
        command.SetAction(parsed => Run(
            bench => Pipeline.EndCopy(bench, parsed.GetValue(mark)!, end, parsed.GetValue(by)!, parsed.GetValue(why), around.Now()),
            Premises.WithA($"Copy {parsed.GetValue(mark)}", library => library.Register.Copy(parsed.GetValue(mark)!) is not null, parsed.GetValue(within), around), around));
        return command;
    }

    public static int Run(Func<Bench, RegisterChange> change, WorkshopFolder folder, Surroundings around)
    {
        using var register = RegisterFile.Hold(folder);
        var bench = Pipeline.Check(folder.Files());
        return Write(change(bench), register, bench, around);
    }

    /// <summary>Writes the line, or says why there is none.</summary>
    public static int Write(RegisterChange change, RegisterFile register, Bench bench, Surroundings around)
    {
        if (change.Refusal is { } refusal)
            throw new RefusedException(refusal.What, refusal.Todo);
        register.Change(change.Line, bench.Library.Workshop.Title?.Value ?? "");
        around.Out.WriteLine(change.Says);
        return ExitCode.Clean;
    }

    public static Option<string> By() => new("--by") { Description = "Initials of who says so.", HelpName = "initials", Required = true };

    public static Option<string?> Why() => new("--why") { Description = "Why, in a few words.", HelpName = "words" };
}
