using System.CommandLine;
using Witnessmark.Cli.Disk;
using Witnessmark.Compiler;
using Witnessmark.Language.Text;
using Witnessmark.Rendering.Messages;

namespace Witnessmark.Cli.Commands;

/// <summary><c>release</c>: puts a version on record with its hash; from then on it does not change.</summary>
internal static class ReleaseCommand
{
    public static Command Make(Surroundings around)
    {
        var procedure = new Argument<string>("procedure") { Description = "Id of a procedure that says status: released." };
        var by = new Option<string>("--by") { Description = "Initials of who releases it.", HelpName = "initials", Required = true };
        var within = CommonOptions.In();
        var command = new Command("release", "Put a version on record with its hash: from then on it does not change.") { procedure, by, within };
        command.SetAction(parsed => Run(parsed.GetValue(procedure)!, parsed.GetValue(by)!, parsed.GetValue(within), around));
        return command;
    }

    private static int Run(string procedure, string by, string? within, Surroundings around)
    {
        var folder = Premises.WithProcedure(procedure, within, around);
        using var register = RegisterFile.Hold(folder);
        var files = folder.Files();
        var bench = SinceRelease(Pipeline.Check(files), procedure, files, folder);
        if (bench.HasFaults)
        {
            FindingReport.Write(bench.Findings, "long", new FindingText(folder.Shown, around.Ink), around.Error);
            around.Error.WriteLine($"{FindingReport.Sum(bench.Findings)} Nothing was released: what has a fault is not for work.");
            return ExitCode.Findings;
        }
        return PutOnRecord.Write(Pipeline.Release(bench, procedure, by, around.Now()), register, bench, around);
    }

    /// <summary>With git at hand a new version is held to what has changed since the one in force.</summary>
    private static Bench SinceRelease(Bench bench, string procedure, IReadOnlyList<RawFile> files, WorkshopFolder folder)
    {
        using var released = ReleasedStates.Of(folder);
        return bench.Library.Register.InForce(procedure) is { } inForce && released.Files(inForce) is { } before
            ? Pipeline.CheckSince(bench, before, [.. files.Select(StoredFile.Of)], procedure)
            : bench;
    }
}
