using System.CommandLine;
using Witnessmark.Cli.Disk;
using Witnessmark.Compiler;
using Witnessmark.Rendering.Messages;

namespace Witnessmark.Cli.Commands;

/// <summary><c>issue</c>: one copy of one released procedure for one machine: the sheet and its blank sign-off.</summary>
internal static class IssueCommand
{
    public static Command Make(Surroundings around)
    {
        var procedure = new Argument<string>("procedure") { Description = "Id of a released procedure: WB-40." };
        var unit = Needed("--unit", "The machine's unit number on site: 14.", "number");
        var serial = Needed("--serial", "The machine's serial number, zeros included: 0417.", "number");
        var place = Needed("--place", "Where on the machine: CL.", "place");
        var by = Needed("--by", "Initials of the person who issues the copy.", "initials");
        var part = new Option<string?>("--part") { Description = "One part of a procedure that is done in parts.", HelpName = "name" };
        var paper = new Option<string?>("--paper") { Description = "A4 or Letter; the workshop's when left out.", HelpName = "A4|Letter" };
        var to = new Option<string?>("--to") { Description = "Initials or name of who is given the copy.", HelpName = "person" };
        var language = new Option<string?>("--language") { Description = "en or es; the procedure's own when left out.", HelpName = "en|es" };
        var within = CommonOptions.In();
        var output = CommonOptions.Out("Folder that the copy is put in.", "issued");
        var command = new Command("issue", "Make one copy of a released procedure: the sheet to print and its blank sign-off.")
        {
            procedure, unit, serial, place, by, to, part, paper, language, within, output,
        };
        command.SetAction(parsed =>
        {
            var order = new IssueOrder(
                parsed.GetValue(procedure)!, parsed.GetValue(part), parsed.GetValue(unit)!, parsed.GetValue(serial)!, parsed.GetValue(place)!,
                parsed.GetValue(by)!, around.Now(), parsed.GetValue(paper), parsed.GetValue(language)) { To = parsed.GetValue(to) };
            return Run(order, parsed.GetValue(within), parsed.GetValue(output)!, around);
        });
        return command;
    }

    private static int Run(IssueOrder order, string? within, string output, Surroundings around)
    {
        var folder = Premises.WithProcedure(order.Procedure, within, around);
        // held while marks are read and one is added: two commands at once would give one mark twice
        using var register = RegisterFile.Hold(folder);
        var bench = Pipeline.Check(folder.Files());
        if (bench.HasFaults)
        {
            FindingReport.Write(bench.Findings, "long", new FindingText(folder.Shown, around.Ink), around.Error);
            around.Error.WriteLine($"{FindingReport.Sum(bench.Findings)} No copy was issued: what has a fault is not printed for work.");
            return ExitCode.Findings;
        }
        var copy = Pipeline.Issue(bench, order);
        if (copy.Refusal is { } refusal)
            throw new RefusedException(refusal.What, refusal.Todo);
        register.Change(copy.Line, bench.Library.Workshop.Title?.Value ?? "", () => OutputFolder.Add(around.FullPath(output), output, copy.Files));
        around.Out.WriteLine($"Copy {copy.Mark} of {order.Procedure} {copy.Version} ({copy.ShortHash}{(copy.Wording.Length > 0 ? $", {copy.Wording}" : "")}) for unit {order.Unit}, serial {order.Serial}, {order.Place}.");
        foreach (var file in copy.Files)
            around.Out.WriteLine($"  {output}/{file.Path}");
        around.Out.WriteLine("Print the sheet one side only. When it comes back, type it into the .yaml and give that to witnessmark receive.");
        return ExitCode.Clean;
    }

    private static Option<string> Needed(string name, string description, string value) => new(name) { Description = description, HelpName = value, Required = true };
}
