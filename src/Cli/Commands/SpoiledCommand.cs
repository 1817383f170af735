using System.CommandLine;
using Witnessmark.Language.Model;

namespace Witnessmark.Cli.Commands;

/// <summary><c>spoiled</c>: nobody may work from a copy any more.</summary>
internal static class SpoiledCommand
{
    public static Command Make(Surroundings around) =>
        PutOnRecord.OfCopy("spoiled", "Put on record that a copy is torn, oiled, lost or called back: nobody may work from it.", CopyEnd.Spoiled, around);
}
