using System.CommandLine;
using Witnessmark.Cli.Disk;
using Witnessmark.Compiler;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;
using Witnessmark.Rendering.Messages;

namespace Witnessmark.Cli.Commands;

/// <summary><c>copies</c>: which copies are out, and which of them have to be called back.</summary>
internal static class CopiesCommand
{
    public static Command Make(Surroundings around)
    {
        var within = CommonOptions.In();
        var command = new Command("copies", "List the copies that are out, and which of them to call back.") { within };
        command.SetAction(parsed => Run(parsed.GetValue(within), around));
        return command;
    }

    private static int Run(string? within, Surroundings around)
    {
        var register = Pipeline.Check(Premises.One(within, around).Files()).Library.Register;
        var isOut = register.Out.ToList();
        foreach (var copy in isOut)
            around.Out.WriteLine(Visible.Text(Line(copy, register)));
        var old = isOut.Count(c => !Holds(c, register));
        around.Out.WriteLine($"{(isOut.Count == 0 ? "No copy" : Say.Count(isOut.Count, "copy", "copies"))} out{(old == 0 ? "" : $", {Say.Number(old)} to call back")}.");
        return old == 0 ? ExitCode.Clean : ExitCode.Findings;
    }

    private static string Line(IssuedCopy copy, Register register)
    {
        var to = copy.To is { } person ? $", with {person}" : "";
        var call = Holds(copy, register) ? "" : register.InForce(copy.Procedure.Value) is { } other ? $"  CALL BACK: {other.Version} is in force" : "  CALL BACK: withdrawn";
        return $"  {copy.Mark}  {copy.Procedure} {copy.Version}, unit {copy.Unit} {copy.Place}, issued {copy.IssuedAt.Value[..Math.Min(10, copy.IssuedAt.Value.Length)]} by {copy.By}{to}{call}";
    }

    private static bool Holds(IssuedCopy copy, Register register) => register.InForce(copy.Procedure.Value) is { } inForce && inForce.Version.Value == copy.Version.Value;
}
