using System.CommandLine;
using Witnessmark.Cli.Disk;
using Witnessmark.Comparing;
using Witnessmark.Compiler;
using Witnessmark.Language.Wording;
using Witnessmark.Rendering.Comparisons;
using Witnessmark.Rendering.Messages;

namespace Witnessmark.Cli.Commands;

/// <summary><c>compare</c>: two states of a workshop, or of one procedure, by what they mean.</summary>
internal static class CompareCommand
{
    public static Command Make(Surroundings around)
    {
        var old = new Argument<string>("old") { Description = "A revision in git (HEAD~1, a tag), a folder with workshop.yaml, or a procedure's file." };
        var made = new Argument<string?>("new") { Description = "The same, for the newer state; the files as they lie here when left out.", Arity = ArgumentArity.ZeroOrOne };
        var only = new Option<string?>("--only") { Description = "Id of one procedure: WB-40.", HelpName = "id" };
        var within = CommonOptions.In();
        var report = Report();
        var command = new Command("compare", "Tell what differs between two states, by what it means for the work.") { old, made, only, within, report };
        command.SetAction(parsed => Run(parsed.GetValue(old)!, parsed.GetValue(made), parsed.GetValue(only), parsed.GetValue(within), parsed.GetValue(report)!, around));
        return command;
    }

    private static int Run(string old, string? made, string? only, string? within, string report, Surroundings around)
    {
        if (only is not null && Premises.Find(within, around).SideBySide)
            within = Premises.WithProcedure(only, within, around).FullPath;
        using var before = ComparedState.Of(old, within, around);
        using var after = ComparedState.Of(made ?? ".", made is null ? within ?? before.Folder : within, around);
        var wanted = only ?? before.Only ?? after.Only;
        using var releases = ReleasedStates.Of(Premises.One(after.Folder, around));
        var compared = Pipeline.CompareSinceReleases(
            Pipeline.Compare(before.Files, after.Files, wanted), after.Files, Pipeline.Register(after.Files), releases.Files);
        around.Out.Write(report switch
        {
            "json" => ComparisonJson.Of(compared.Comparison),
            "markdown" => ComparisonMarkdown.Of(compared.Comparison),
            "html" => ComparisonPage.Of(compared.Comparison, old, made ?? "here", CommandLine.Version),
            _ => Visible.Lines(ComparisonText.Of(compared.Comparison)),
        });
        Faults(before.Shown, compared.OldFaults.Length, around);
        Faults(after.Shown, compared.NewFaults.Length, around);
        return compared.Comparison.Class == ChangeClass.None ? ExitCode.Clean : ExitCode.Findings;
    }

    private static void Faults(string shown, int faults, Surroundings around)
    {
        if (faults > 0)
            around.Error.WriteLine($"{Visible.Text(shown)} has {Say.Count(faults, "fault")}: what could not be read is not compared. witnessmark check tells more.");
    }

    private static Option<string> Report()
    {
        var option = new Option<string>("--report")
        {
            Description = "How it is told: text, json, markdown (for a pull request) or html (a page to print).",
            HelpName = "text|json|markdown|html",
            DefaultValueFactory = _ => "text",
        };
        option.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: not ("text" or "json" or "markdown" or "html") } token])
                result.AddError($"--report does not know {token.Value}; it takes text, json, markdown or html.");
        });
        return option;
    }
}
