using System.CommandLine;
using Witnessmark.Cli.Disk;
using Witnessmark.Compiler;

namespace Witnessmark.Cli.Commands;

/// <summary><c>withdraw</c>: a released version no longer holds.</summary>
internal static class WithdrawCommand
{
    public static Command Make(Surroundings around)
    {
        var procedure = new Argument<string>("procedure") { Description = "Id of a procedure: WB-40." };
        var version = new Argument<string>("version") { Description = "The version that shall no longer hold: 2.0.0." };
        var (by, why, within) = (PutOnRecord.By(), PutOnRecord.Why(), CommonOptions.In());
        var command = new Command("withdraw", "Put on record that a released version no longer holds.") { procedure, version, by, why, within };
        command.SetAction(parsed => PutOnRecord.Run(
            bench => Pipeline.Withdraw(bench, parsed.GetValue(procedure)!, parsed.GetValue(version)!, parsed.GetValue(by)!, parsed.GetValue(why), around.Now()),
            Premises.WithProcedure(parsed.GetValue(procedure)!, parsed.GetValue(within), around), around));
        return command;
    }
}
