using System.CommandLine;
using Witnessmark.Cli.Disk;
using Witnessmark.Compiler;
using Witnessmark.Records.Receiving;
using Witnessmark.Rendering.Messages;

namespace Witnessmark.Cli.Commands;

/// <summary><c>receive</c>: holds a sign-off against the very version that was printed.</summary>
internal static class ReceiveCommand
{
    public static Command Make(Surroundings around)
    {
        var record = new Argument<string>("record") { Description = "The sign-off, typed from the sheet." };
        var within = CommonOptions.In();
        var report = CommonOptions.Report();
        var command = new Command("receive", "Hold a sign-off against the version that was printed: complete, open or refused.") { record, within, report };
        command.SetAction(parsed => Run(parsed.GetValue(record)!, parsed.GetValue(within), parsed.GetValue(report)!, around));
        return command;
    }

    private static int Run(string record, string? within, string report, Surroundings around)
    {
        var full = around.FullPath(record);
        if (Directory.Exists(full))
            throw new RefusedException($"{record} is a folder, not a file.", "Name the .yaml that was issued with the sheet, filled in.");
        if (!File.Exists(full))
            throw new RefusedException($"There is no file {record}.", "Name the .yaml that was issued with the sheet, filled in.");
        var typed = WorkshopFolder.ReadOne(full, record);
        var folder = Premises.WithA($"What {record} names", library => Pipeline.Knows(library, typed), within, around);
        var files = folder.Files();
        var bench = Pipeline.Check(files);
        if (bench.HasFaults)
            throw new RefusedException(
                $"The workshop itself has faults ({FindingReport.Sum(bench.Findings)}), so nothing can be held against it.",
                $"Run witnessmark check {folder.Shown} and put them right, or go back to the version that was printed.");
        using var states = ReleasedStates.Of(folder);
        var reception = Pipeline.Receive(bench, typed, states.Beside(files));
        if (report == "json")
            around.Out.Write(ReceptionText.Json(reception));
        else
        {
            FindingReport.Write(reception.Findings, report, new FindingText("", around.Ink), around.Out);
            around.Out.WriteLine(ReceptionText.Verdict(reception));
        }
        return reception.State == ReceptionState.Complete ? ExitCode.Clean : ExitCode.Findings;
    }
}
