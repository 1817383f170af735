using System.CommandLine;
using Witnessmark.Cli.Disk;
using Witnessmark.Compiler;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Tidying;
using Witnessmark.Rendering.Messages;

namespace Witnessmark.Cli.Commands;

/// <summary><c>tidy</c>: puts layout in order and changes nothing else.</summary>
internal static class TidyCommand
{
    public static Command Make(Surroundings around)
    {
        var workshop = CommonOptions.Workshop();
        var dryRun = CommonOptions.DryRun("put in order");
        var command = new Command("tidy", "Put the layout of the files in order, and change nothing that they say.") { workshop, dryRun };
        command.SetAction(parsed => Run(parsed.GetValue(workshop), parsed.GetValue(dryRun), around));
        return command;
    }

    private static int Run(string? path, bool dryRun, Surroundings around)
    {
        var premises = Premises.Find(path, around);
        var code = ExitCode.Clean;
        foreach (var folder in premises.Workshops)
        {
            var (text, end) = Run(folder, dryRun, around);
            around.Out.WriteLine(premises.SideBySide ? $"{Visible.Text(folder.Shown)}: {text}" : text);
            code = Math.Max(code, end);
        }
        return code;
    }

    private static (string Sum, int Code) Run(WorkshopFolder folder, bool dryRun, Surroundings around)
    {
        var tidied = Pipeline.Tidy(folder.Files(), folder.Only);
        if (!tidied.Faults.IsEmpty)
        {
            FindingReport.Write(tidied.Faults, "long", new FindingText(folder.Shown, around.Ink), around.Error);
            return ($"{FindingReport.Sum(tidied.Faults)} Nothing was tidied: what cannot be read for certain is not touched.", ExitCode.Findings);
        }
        if (!dryRun)
            folder.Rewrite([.. tidied.Files.Select(f => f.Tidied)]);
        foreach (var file in tidied.Files)
            around.Out.WriteLine(Visible.Text($"{folder.ShownPath(file.Path)}: {string.Join(", ", file.Changes.Select(c => Told(c.Key, c.Value)))}."));
        foreach (var left in tidied.LeftAlone)
            around.Error.WriteLine(Visible.Text($"{folder.ShownPath(left)} stays as it is: tidied, it would say something else. Please report this file."));
        return (Sum(tidied.Files.Length, dryRun), !tidied.LeftAlone.IsEmpty || (dryRun && !tidied.Files.IsEmpty) ? ExitCode.Findings : ExitCode.Clean);
    }

    private static string Sum(int files, bool dryRun) => (files, dryRun) switch
    {
        (0, _) => "Nothing to put in order.",
        (_, true) => $"{Say.Count(files, "file")} would be tidied; no hash would change.",
        _ => $"{Say.Count(files, "file")} tidied; no hash has changed.",
    };

    private static string Told(Untidiness kind, int count) => kind switch
    {
        Untidiness.ByteOrderMark => "byte order mark",
        Untidiness.LastLine => "end of the last line",
        Untidiness.LineEnds => Say.Count(count, "line end"),
        Untidiness.TrailingBlanks => Say.Count(count, "line with blanks at its end", "lines with blanks at their end"),
        Untidiness.Letters => Say.Count(count, "line with letters in two codes", "lines with letters in two codes"),
        Untidiness.Bullets => Say.Count(count, "bullet"),
        Untidiness.StepNumbers => Say.Count(count, "step number"),
        Untidiness.Units => Say.Count(count, "unit"),
        _ => Say.Count(count, "blank line"),
    };
}
