using System.Collections.Immutable;
using System.CommandLine;
using Witnessmark.Cli.Disk;
using Witnessmark.Compiler;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Press;
using Witnessmark.Rendering.Messages;

namespace Witnessmark.Cli.Commands;

/// <summary><c>print</c>: specimens as PDF, of one procedure or of the whole workshop.</summary>
internal static class PrintCommand
{
    public static Command Make(Surroundings around)
    {
        var procedure = new Argument<string?>("procedure") { Description = "Id of a procedure: WB-40. Every sheet of the workshop when left out.", Arity = ArgumentArity.ZeroOrOne };
        var part = new Option<string?>("--part") { Description = "One part of a procedure that is done in parts; all when left out.", HelpName = "name" };
        var paper = new Option<string?>("--paper") { Description = "A4 or Letter; the workshop's when left out.", HelpName = "A4|Letter" };
        var within = CommonOptions.In();
        var output = CommonOptions.Out("Folder for the PDFs; made anew each time.", "printed");
        var command = new Command("print", "Print specimens of the sheets to PDF, through a browser.") { procedure, part, paper, within, output };
        command.SetAction(parsed => Run(
            new PrintOrder(parsed.GetValue(procedure), parsed.GetValue(part), parsed.GetValue(paper)), parsed.GetValue(within), parsed.GetValue(output)!, around));
        return command;
    }

    private static int Run(PrintOrder order, string? within, string output, Surroundings around)
    {
        var folder = order.Procedure is { } id ? Premises.WithProcedure(id, within, around) : Premises.One(within, around);
        var bench = Pipeline.Check(folder.Files());
        if (bench.HasFaults)
        {
            FindingReport.Write(bench.Findings, "long", new FindingText(folder.Shown, around.Ink), around.Error);
            around.Error.WriteLine($"{FindingReport.Sum(bench.Findings)} Nothing was printed: what has a fault is not printed for work.");
            return ExitCode.Findings;
        }
        var wanted = Pipeline.Specimens(bench, order);
        if (wanted.Refusal is { } refusal)
            throw new RefusedException(refusal.What, refusal.Todo);
        var printed = Press(wanted.Sheets, around).GetAwaiter().GetResult();
        OutputFolder.Replace(around.FullPath(output), output, wanted.Sheets.Zip(printed, (s, p) => new OutputFile(s.Path, p.Pdf)));
        foreach (var (sheet, pdf) in wanted.Sheets.Zip(printed))
            around.Out.WriteLine($"  {output.TrimEnd('/', '\\')}/{sheet.Path}, {Say.Count(pdf.Pages, "page")}");
        around.Out.WriteLine($"{Say.Count(printed.Count, "specimen")} printed, to look at. witnessmark issue makes the copy to work from.");
        return ExitCode.Clean;
    }

    private static async Task<IReadOnlyList<PrintedSheet>> Press(ImmutableArray<SpecimenPrint> sheets, Surroundings around)
    {
        try
        {
            using var bar = new ProgressBar(around, "printing", sheets.Length);
            await using var press = await PrintingPress.Start(around.Browsers.Find());
            return await press.Print([.. sheets.Select(s => s.Sheet)], bar.Show);
        }
        catch (PressException stopped)
        {
            throw new RefusedException(stopped.What, stopped.Todo);
        }
    }
}
