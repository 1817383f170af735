using System.Collections.Immutable;
using System.CommandLine;
using Witnessmark.Cli.Disk;
using Witnessmark.Compiler;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Rendering.Messages;

namespace Witnessmark.Cli.Commands;

/// <summary><c>check</c>: reads a workshop and tells what is wrong, before anybody bleeds.</summary>
internal static class CheckCommand
{
    public static Command Make(Surroundings around)
    {
        var workshop = CommonOptions.Workshop();
        var report = CommonOptions.Report();
        var since = new Option<string?>("--since")
        {
            Description = "A revision in git, or a folder: hold what has changed since then to its version, its approvals and what it leaves out.",
            HelpName = "revision",
        };
        var command = new Command("check", "Read a workshop and tell what is wrong with it.") { workshop, since, report };
        command.SetAction(parsed => Run(parsed.GetValue(workshop), parsed.GetValue(since), parsed.GetValue(report)!, around));
        return command;
    }

    private static int Run(string? path, string? since, string report, Surroundings around)
    {
        var folder = WorkshopFolder.Find(path, around);
        var files = folder.Files();
        var bench = Pipeline.Check(files);
        if (since is not null)
        {
            using var before = ComparedState.Of(since, path, around);
            bench = Pipeline.CheckSince(bench, before.Files, [.. files.Select(StoredFile.Of)]);
        }
        var (shown, elsewhere) = Split(bench.Findings, folder.Only);
        FindingReport.Write(shown, report, new FindingText(folder.Shown, around.Ink), around.Out);
        if (report != "json")
        {
            var more = elsewhere == 0 ? "" : $" {Say.Count(elsewhere, "finding")} in other files of the workshop.";
            around.Out.WriteLine($"{FindingReport.Sum(shown)} {bench.Extent} read.{more}");
        }
        return shown.IsEmpty ? ExitCode.Clean : ExitCode.Findings;
    }

    /// <summary>With one file named, its own findings and those that point into it.</summary>
    private static (ImmutableArray<Finding> Shown, int Elsewhere) Split(ImmutableArray<Finding> findings, string? only)
    {
        if (only is null)
            return (findings, 0);
        ImmutableArray<Finding> shown = [.. findings.Where(f => f.At.Source.Path == only || f.Further.Any(p => p.At.Source.Path == only))];
        return (shown, findings.Length - shown.Length);
    }
}
