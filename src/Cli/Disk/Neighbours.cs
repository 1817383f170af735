using Witnessmark.Language.Findings;

namespace Witnessmark.Cli.Disk;

/// <summary>What else there is where a path leads nowhere.</summary>
internal static class Neighbours
{
    public static string Of(string full)
    {
        var parent = Path.GetDirectoryName(full);
        if (parent is null || !Directory.Exists(parent))
            return "Look at the path again: the folder it should be in is not there either.";
        var near = NearMiss.Of(Path.GetFileName(full), Directory.EnumerateFileSystemEntries(parent).Take(1000).Select(e => Path.GetFileName(e)));
        return near is null ? "Look at the path again." : $"Did you mean {near}?";
    }
}
