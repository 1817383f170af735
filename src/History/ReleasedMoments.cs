using System.Text;
using LibGit2Sharp;

namespace Witnessmark.History;

public sealed partial class WorkshopHistory
{
    /// <summary>
    /// The moment at which a line came into the register: what the files said then is what was released. Looked for from here back along
    /// all parents; the oldest commit that has the line counts.
    /// </summary>
    /// <param name="isRegister">Which files of the workshop are registers, by path.</param>
    /// <param name="says">Whether a line of a register is the one.</param>
    /// <returns>Null when git has no such line.</returns>
    public Moment? FirstWith(Func<string, bool> isRegister, Func<string, bool> says)
    {
        var known = new Dictionary<string, bool>(StringComparer.Ordinal);
        Commit? first = null;
        foreach (var commit in _git.Commits.QueryBy(new CommitFilter { SortBy = CommitSortStrategies.Topological }))
        {
            if (!Registers(commit, isRegister).Any(blob => Says(blob)))
                continue;
            first = commit;
        }
        return first is null ? null : Of(first);

        bool Says(Blob blob)
        {
            if (!known.TryGetValue(blob.Sha, out var yes))
                known[blob.Sha] = yes = Encoding.UTF8.GetString(Read("", blob).Bytes.Span).Split('\n').Any(says);
            return yes;
        }
    }

    private IEnumerable<Blob> Registers(Commit commit, Func<string, bool> isRegister)
    {
        var tree = _within.Length == 0 ? commit.Tree : commit.Tree[_within]?.Target as Tree;
        return tree is null ? [] : tree.Where(e => e.TargetType == TreeEntryTargetType.Blob && isRegister(e.Name)).Select(e => (Blob)e.Target);
    }
}
