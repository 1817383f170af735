using System.Collections.Immutable;
using System.CommandLine;
using Witnessmark.Cli.Disk;
using Witnessmark.Compiler;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
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
        var premises = Premises.Find(path, around);
        ImmutableArray<Read> all = [.. premises.Workshops.Select(Read.Of)];
        Tell(all, report, premises, around);
        ImmutableArray<Finding> findings = [.. all.SelectMany(r => r.Bench.Findings)];
        if (all.Any(r => r.Bench.HasFaults))
        {
            around.Error.WriteLine($"{FindingReport.Sum(findings)} Nothing was built: what has a fault is not printed for work.");
            return ExitCode.Findings;
        }
        var kitOf = trial.Procedure is { } id && premises.SideBySide ? Premises.WithProcedure(id, path, around) : all[0].Folder;
        ImmutableArray<OutputFile> files = premises.SideBySide
            ? [.. Pipeline.Doors([.. all.Select(r => (Premises.NameOf(r.Folder), r.Bench))], CommandLine.Version), .. all.SelectMany(r => Pages(r, r.Folder == kitOf ? trial : new TrialOrder(null)).Select(f => f with { Path = $"{Premises.NameOf(r.Folder)}/{f.Path}" }))]
            : Pages(all[0], trial);
        OutputFolder.Replace(around.FullPath(output), output, files);
        if (report != "json")
            around.Out.WriteLine($"{FindingReport.Sum(findings)} {Extent(all, premises)} read; {files.Length} files in {output}. Open {output.TrimEnd('/', '\\')}/index.html.");
        return !FindingReport.TellLeft(premises, around) && findings.IsEmpty ? ExitCode.Clean : ExitCode.Findings;
    }

    private static void Tell(ImmutableArray<Read> all, string report, Premises premises, Surroundings around)
    {
        if (report == "json")
            around.Out.Write(FindingReport.Json(premises, all.Select(r => r.Bench.Findings)));
        else
            foreach (var one in all)
                FindingReport.Write(one.Bench.Findings, report, new FindingText(one.Folder.Shown, around.Ink), around.Error);
    }

    private static ImmutableArray<OutputFile> Pages(Read one, TrialOrder trial)
    {
        var kit = Pipeline.TrialKit(one.Bench, trial);
        if (kit.Refusal is { } refusal)
            throw new RefusedException(refusal.What, refusal.Todo);
        using var states = ReleasedStates.Of(one.Folder);
        return Pipeline.Build(one.Bench, CommandLine.Version, one.Folder.Records(), states.Beside(one.Files)).AddRange(kit.Files);
    }

    private static string Extent(ImmutableArray<Read> all, Premises premises) => premises.SideBySide ? Say.Count(all.Length, "workshop") : all[0].Bench.Extent;

    /// <summary>A workshop that was read and checked, with its files.</summary>
    private sealed record Read(WorkshopFolder Folder, IReadOnlyList<RawFile> Files, Bench Bench)
    {
        public static Read Of(WorkshopFolder folder)
        {
            var files = folder.Files();
            return new Read(folder, files, Pipeline.Check(files));
        }
    }
}
