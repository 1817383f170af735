using Witnessmark.History;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;

namespace Witnessmark.Cli.Disk;

/// <summary>One of two states that are compared: files on disk, or a revision of the workshop that the command stands in.</summary>
/// <param name="Shown">As it was named.</param>
/// <param name="Folder">The workshop on disk, so that the other state is looked for there.</param>
/// <param name="Only">The procedure whose file was named.</param>
internal sealed record ComparedState(string Shown, string? Folder, IReadOnlyList<StoredFile> Files, string? Only, IDisposable? Kept) : IDisposable
{
    public static ComparedState Of(string named, string? within, Surroundings around)
    {
        // a folder or file wins over a revision of that name: what can be seen is meant
        if (Directory.Exists(around.FullPath(named)) || File.Exists(around.FullPath(named)))
            return OnDisk(named == "." ? within ?? named : named, around);
        var folder = Premises.One(within, around);
        if (WorkshopHistory.Open(folder.FullPath) is not { } history)
            throw new RefusedException($"There is no file or folder {named}, and no git here that could know a revision of that name.", "Name two folders or two files, or stand in a workshop that git keeps.");
        if (history.Find(named) is { } moment)
            return new ComparedState(named, folder.FullPath, history.Files(moment, WorkshopFolder.IsRead), null, history);
        var near = NearMiss.Of(named, history.Names);
        history.Dispose();
        throw new RefusedException($"{named} is no file, no folder and no revision that git knows here.", near is null ? "git log shows the revisions; HEAD~1 is the one before the last." : $"Did you mean {near}?");
    }

    public void Dispose() => Kept?.Dispose();

    private static ComparedState OnDisk(string named, Surroundings around)
    {
        var folder = Premises.One(named, around);
        var files = folder.Files();
        var only = folder.Only is { } path ? IdIn(files.First(f => f.Path == path), named) : null;
        return new ComparedState(named, folder.FullPath, [.. files.Select(StoredFile.Of)], only, null);
    }

    private static string IdIn(RawFile file, string named) =>
        System.Text.Encoding.UTF8.GetString(file.Bytes.Span).Split('\n').Select(l => l.Trim())
            .FirstOrDefault(l => l.StartsWith("procedure: ", StringComparison.Ordinal) || l.StartsWith("job: ", StringComparison.Ordinal))?.Split(' ')[1]
        ?? throw new RefusedException($"{named} is no procedure.", "Name the file of a procedure, a folder with workshop.yaml, or a revision.");
}
