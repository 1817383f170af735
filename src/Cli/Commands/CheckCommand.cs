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
        var premises = Premises.Find(path, around);
        ImmutableArray<Checked> all = [.. premises.Workshops.Select(w => Of(w, since, premises, around))];
        if (report == "json")
            around.Out.Write(FindingReport.Json(premises, all.Select(c => c.Shown)));
        else
            foreach (var one in all)
                Tell(one, report, premises, around);
        if (report != "json" && premises.SideBySide)
            around.Out.WriteLine($"{Say.Count(all.Length, "workshop")}: {FindingReport.Sum([.. all.SelectMany(c => c.Shown)])}");
        return all.All(c => c.Shown.IsEmpty) ? ExitCode.Clean : ExitCode.Findings;
    }

    private static Checked Of(WorkshopFolder folder, string? since, Premises premises, Surroundings around)
    {
        var files = folder.Files();
        var bench = Pipeline.Check(files);
        if (since is not null)
        {
            // of a folder with workshops side by side, the one of that name
            var within = Path.Combine(since, Premises.NameOf(folder));
            using var before = ComparedState.Of(premises.SideBySide && Directory.Exists(around.FullPath(within)) ? within : since, folder.FullPath, around);
            bench = Pipeline.CheckSince(bench, before.Files, [.. files.Select(StoredFile.Of)]);
        }
        var (shown, elsewhere) = Split(bench.Findings, folder.Only);
        return new Checked(folder, bench, shown, elsewhere);
    }

    private static void Tell(Checked one, string report, Premises premises, Surroundings around)
    {
        FindingReport.Write(one.Shown, report, new FindingText(one.Folder.Shown, around.Ink), around.Out);
        var name = premises.SideBySide ? $"{Visible.Text(one.Folder.Shown)}: " : "";
        var more = one.Elsewhere == 0 ? "" : $" {Say.Count(one.Elsewhere, "finding")} in other files of the workshop.";
        around.Out.WriteLine($"{name}{FindingReport.Sum(one.Shown)} {one.Bench.Extent} read.{more}");
    }

    /// <summary>With one file named, its own findings and those that point into it.</summary>
    private static (ImmutableArray<Finding> Shown, int Elsewhere) Split(ImmutableArray<Finding> findings, string? only)
    {
        if (only is null)
            return (findings, 0);
        ImmutableArray<Finding> shown = [.. findings.Where(f => f.At.Source.Path == only || f.Further.Any(p => p.At.Source.Path == only))];
        return (shown, findings.Length - shown.Length);
    }

    private sealed record Checked(WorkshopFolder Folder, Bench Bench, ImmutableArray<Finding> Shown, int Elsewhere);
}
