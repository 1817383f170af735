using System.CommandLine;
using Witnessmark.Language.Model;

namespace Witnessmark.Cli.Commands;

/// <summary><c>returned</c>: a copy has come back.</summary>
internal static class ReturnedCommand
{
    public static Command Make(Surroundings around) => PutOnRecord.OfCopy("returned", "Put on record that a copy has come back.", CopyEnd.Returned, around);
}
