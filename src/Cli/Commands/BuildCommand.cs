using System.CommandLine;
using Witnessmark.Cli.Disk;
using Witnessmark.Compiler;
using Witnessmark.Rendering.Messages;

namespace Witnessmark.Cli.Commands;

/// <summary><c>build</c>: sheets to print and a site to read, from a workshop without faults.</summary>
internal static class BuildCommand
{
    public static Command Make(Surroundings around)
    {
        var workshop = CommonOptions.Workshop();
        var output = CommonOptions.Out("Folder for the site and the sheets; made anew each time.", "out");
        var report = CommonOptions.Report();
        var trial = new Option<string?>("--trial-kit") { Description = "Also a sheet of this procedure with planted errors, to try the sheet on people.", HelpName = "id" };
        var part = new Option<string?>("--part") { Description = "With --trial-kit, one part of a procedure that is done in parts; all when left out.", HelpName = "name" };
        var command = new Command("build", "Make the sheets to print and the site to read.") { workshop, output, report, trial, part };
        command.SetAction(parsed => Run(parsed.GetValue(workshop), parsed.GetValue(output)!, parsed.GetValue(report)!, new TrialOrder(parsed.GetValue(trial), parsed.GetValue(part)), around));
        return command;
    }

    private static int Run(string? path, string output, string report, TrialOrder trial, Surroundings around)
    {
        var folder = WorkshopFolder.Find(path, around);
        var lie = folder.Files();
        var bench = Pipeline.Check(lie);
        FindingReport.Write(bench.Findings, report, new FindingText(folder.Shown, around.Ink), report == "json" ? around.Out : around.Error);
        if (bench.HasFaults)
        {
            around.Error.WriteLine($"{FindingReport.Sum(bench.Findings)} Nothing was built: what has a fault is not printed for work.");
            return ExitCode.Findings;
        }
        var kit = Pipeline.TrialKit(bench, trial);
        if (kit.Refusal is { } refusal)
            throw new RefusedException(refusal.What, refusal.Todo);
        using var states = ReleasedStates.Of(folder);
        var files = Pipeline.Build(bench, CommandLine.Version, folder.Records(), states.Beside(lie)).AddRange(kit.Files);
        OutputFolder.Replace(around.FullPath(output), output, files);
        if (report != "json")
            around.Out.WriteLine($"{FindingReport.Sum(bench.Findings)} {bench.Extent} read; {files.Length} files in {output}. Open {output.TrimEnd('/', '\\')}/index.html.");
        return bench.Findings.IsEmpty ? ExitCode.Clean : ExitCode.Findings;
    }
}
