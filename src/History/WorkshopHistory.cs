using LibGit2Sharp;
using Witnessmark.Language.Text;

namespace Witnessmark.History;

/// <summary>A point in the history of a workshop.</summary>
/// <param name="Id">All 40 digits of the commit.</param>
public sealed record Moment(string Id, DateTimeOffset When, string Title)
{
    public string Short => Id[..10];
}

/// <summary>
/// A workshop as git has kept it. Files are named at once and read only when asked for, so that a comparison costs what differs.
/// Nothing is checked out, no filter of the repository is run, no link is followed.
/// </summary>
public sealed partial class WorkshopHistory : IDisposable
{
    private readonly Repository _git;
    private readonly string _within;

    private WorkshopHistory(Repository git, string within) => (_git, _within) = (git, within);

    /// <param name="folder">Of the workshop, in full.</param>
    /// <returns>Null where there is no git.</returns>
    public static WorkshopHistory? Open(string folder)
    {
        if (Repository.Discover(folder) is not { } found)
            return null;
        try
        {
            var git = new Repository(found);
            var root = git.Info.WorkingDirectory;
            return root is null ? null : new WorkshopHistory(git, Within(Real(root), Real(folder)));
        }
        catch (LibGit2SharpException)
        {
            return null;
        }
    }

    /// <summary>A commit by its name, tag, branch, digits, or <c>HEAD~2</c>, and of a tag with words what it was put on; null when git knows none.</summary>
    public Moment? Find(string revision)
    {
        try
        {
            return _git.Lookup(revision)?.Peel<Commit>() is { } commit ? Of(commit) : null;
        }
        catch (LibGit2SharpException)
        {
            return null;
        }
    }

    /// <summary>Names that a revision can have, newest commits last: to say which was meant.</summary>
    public IEnumerable<string> Names => ["HEAD", .. _git.Branches.Select(b => b.FriendlyName), .. _git.Tags.Select(t => t.FriendlyName)];

    /// <summary>The files of the workshop at that moment, by path: those that <paramref name="isOurs"/> lets in.</summary>
    public IReadOnlyList<StoredFile> Files(Moment moment, Func<string, bool> isOurs)
    {
        var commit = _git.Lookup<Commit>(moment.Id);
        var tree = _within.Length == 0 ? commit.Tree : commit.Tree[_within]?.Target as Tree;
        var files = new List<StoredFile>();
        if (tree is not null)
            Collect(tree, "", files, isOurs);
        files.Sort((a, b) => string.CompareOrdinal(a.Path, b.Path));
        return files;
    }

    public void Dispose() => _git.Dispose();

    private static void Collect(Tree tree, string path, List<StoredFile> files, Func<string, bool> isOurs)
    {
        foreach (var entry in tree)
        {
            var name = path + entry.Name;
            if (entry.TargetType == TreeEntryTargetType.Tree && isOurs(name + "/"))
                Collect((Tree)entry.Target, name + "/", files, isOurs);
            else if (entry is { TargetType: TreeEntryTargetType.Blob, Mode: not Mode.SymbolicLink } && isOurs(name))
                files.Add(new StoredFile(name, entry.Target.Sha, () => Read(name, (Blob)entry.Target)));
        }
    }

    private static RawFile Read(string name, Blob blob)
    {
        if (blob.Size > RawFile.Limit)
            return new RawFile(name, blob.Size, ReadOnlyMemory<byte>.Empty);
        using var content = blob.GetContentStream();
        using var bytes = new MemoryStream();
        content.CopyTo(bytes);
        return RawFile.Of(name, bytes.ToArray());
    }

    private static Moment Of(Commit commit) => new(commit.Sha, commit.Committer.When, commit.MessageShort);

    private static string Within(string root, string folder)
    {
        var within = Path.GetRelativePath(root, folder).Replace('\\', '/').Trim('/');
        return within == "." ? "" : within;
    }

    // git tells the place that a link leads to
    private static string Real(string path) => new DirectoryInfo(path).ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? Path.GetFullPath(path);
}
