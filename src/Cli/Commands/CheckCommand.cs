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
        var everyWay = new Option<bool>("--every-way") { Description = "Follow every way through each procedure and job as well, and hold the machine's rules at every step." };
        var putRight = PutRightOption.Make();
        var command = new Command("check", "Read a workshop and tell what is wrong with it.") { workshop, since, everyWay, putRight, report };
        command.SetAction(parsed => Run(parsed.GetValue(workshop), new Asked(parsed.GetValue(since), parsed.GetValue(everyWay), parsed.GetValue(putRight)), parsed.GetValue(report)!, around));
        return command;
    }

    private static int Run(string? path, Asked asked, string report, Surroundings around)
    {
        var premises = Premises.Find(path, around);
        ImmutableArray<Checked> all = [.. premises.Workshops.Select(w => Of(w, asked, asked.PutRight ? (report == "json" ? around.Error : around.Out) : null, premises, around))];
        if (report == "json")
            around.Out.Write(FindingReport.Json(premises, all.Select(c => c.Shown)));
        else
            foreach (var one in all)
                Tell(one, report, premises, around);
        if (report != "json" && premises.SideBySide)
            around.Out.WriteLine($"{Say.Count(all.Length, "workshop")}: {FindingReport.Sum([.. all.SelectMany(c => c.Shown)])}");
        return !FindingReport.TellLeft(premises, around) && all.All(c => c.Shown.IsEmpty) ? ExitCode.Clean : ExitCode.Findings;
    }

    private static Checked Of(WorkshopFolder folder, Asked asked, TextWriter? putRight, Premises premises, Surroundings around)
    {
        if (putRight is not null)
            PutRightOption.Run(folder, premises.SideBySide ? $"{Visible.Text(folder.Shown)}: " : "", putRight);
        var files = folder.Files();
        var bench = Pipeline.Check(files);
        if (asked.EveryWay)
            bench = Pipeline.CheckEveryWay(bench);
        if (asked.Since is { } since)
        {
            // of a folder with workshops side by side, the one of that name
            var within = Path.Combine(since, Premises.NameOf(folder));
            using var before = ComparedState.Of(premises.SideBySide && Directory.Exists(around.FullPath(within)) ? within : since, folder.FullPath, around);
            bench = Pipeline.CheckSince(bench, before.Files, [.. files.Select(StoredFile.Of)]);
        }
        ImmutableArray<Finding> shown = [.. bench.Findings.Where(f => f.Concerns(folder.Only))];
        return new Checked(folder, bench, shown, bench.Findings.Length - shown.Length);
    }

    private static void Tell(Checked one, string report, Premises premises, Surroundings around)
    {
        FindingReport.Write(one.Shown, report, new FindingText(one.Folder.Shown, around.Ink), around.Out);
        var name = premises.SideBySide ? $"{Visible.Text(one.Folder.Shown)}: " : "";
        var more = one.Elsewhere == 0 ? "" : $" {Say.Count(one.Elsewhere, "finding")} in other files of the workshop.";
        around.Out.WriteLine($"{name}{FindingReport.Sum(one.Shown)} {one.Bench.Extent} read.{more}");
    }

    /// <summary>What is looked at beside the files as they stand.</summary>
    private sealed record Asked(string? Since, bool EveryWay, bool PutRight);

    private sealed record Checked(WorkshopFolder Folder, Bench Bench, ImmutableArray<Finding> Shown, int Elsewhere);
}
