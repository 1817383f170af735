using System.CommandLine;
using Witnessmark.Cli.Disk;
using Witnessmark.Compiler;
using Witnessmark.Language.Model;

namespace Witnessmark.Cli.Commands;

/// <summary><c>returned</c>, <c>spoiled</c>, <c>withdraw</c>: what became of a copy or a version is put on record.</summary>
internal static class EndCommand
{
    public static Command Returned(Surroundings around) => OfCopy("returned", "Put on record that a copy has come back.", CopyEnd.Returned, around);

    public static Command Spoiled(Surroundings around) => OfCopy("spoiled", "Put on record that a copy is torn, oiled, lost or called back: nobody may work from it.", CopyEnd.Spoiled, around);

    public static Command Withdraw(Surroundings around)
    {
        var procedure = new Argument<string>("procedure") { Description = "Id of a procedure: WB-40." };
        var version = new Argument<string>("version") { Description = "The version that shall no longer hold: 2.0.0." };
        var (by, why, within) = (By(), Why(), CommonOptions.In());
        var command = new Command("withdraw", "Put on record that a released version no longer holds.") { procedure, version, by, why, within };
        command.SetAction(parsed => Run(
            bench => Pipeline.Withdraw(bench, parsed.GetValue(procedure)!, parsed.GetValue(version)!, parsed.GetValue(by)!, parsed.GetValue(why), around.Now()), parsed.GetValue(within), around));
        return command;
    }

    /// <summary>Writes the line, or says why there is none.</summary>
    public static int Put(RegisterChange change, RegisterFile register, Bench bench, Surroundings around)
    {
        if (change.Refusal is { } refusal)
            throw new RefusedException(refusal.What, refusal.Todo);
        register.Change(change.Line, bench.Library.Workshop.Title?.Value ?? "");
        around.Out.WriteLine(change.Says);
        return ExitCode.Clean;
    }

    private static Command OfCopy(string name, string description, CopyEnd end, Surroundings around)
    {
        var mark = new Argument<string>("mark") { Description = "The three signs in the corner of its pages: K7M." };
        var (by, why, within) = (By(), Why(), CommonOptions.In());
        var command = new Command(name, description) { mark, by, why, within };
        command.SetAction(parsed => Run(
            bench => Pipeline.EndCopy(bench, parsed.GetValue(mark)!, end, parsed.GetValue(by)!, parsed.GetValue(why), around.Now()), parsed.GetValue(within), around));
        return command;
    }

    private static int Run(Func<Bench, RegisterChange> change, string? within, Surroundings around)
    {
        var folder = WorkshopFolder.Find(within, around);
        using var register = RegisterFile.Hold(folder);
        var bench = Pipeline.Check(folder.Files());
        return Put(change(bench), register, bench, around);
    }

    private static Option<string> By() => new("--by") { Description = "Initials of who says so.", HelpName = "initials", Required = true };

    private static Option<string?> Why() => new("--why") { Description = "Why, in a few words.", HelpName = "words" };
}
