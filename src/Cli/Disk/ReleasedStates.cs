using Witnessmark.History;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Cli.Disk;

/// <summary>The files of the workshop as they were when a version was put on record, from git. Without git there are none.</summary>
internal sealed class ReleasedStates : IDisposable
{
    private readonly WorkshopHistory? _history;
    private readonly Dictionary<string, IReadOnlyList<StoredFile>?> _known = new(StringComparer.Ordinal);

    private ReleasedStates(WorkshopHistory? history) => _history = history;

    public static ReleasedStates Of(WorkshopFolder folder) => new(WorkshopHistory.Open(folder.FullPath));

    /// <summary>Null where git has no commit with that line of the register.</summary>
    public IReadOnlyList<StoredFile>? Files(ReleasedVersion version)
    {
        if (_history is null)
            return null;
        if (!_known.TryGetValue(version.Hash.Value, out var files))
        {
            var moment = _history.FirstWith(IsRegister, line => line.Contains($"procedure: {version.Procedure},", StringComparison.Ordinal) && line.Contains($"hash: {Written(version.Hash.Value)}", StringComparison.Ordinal));
            _known[version.Hash.Value] = files = moment is null ? null : _history.Files(moment, WorkshopFolder.IsRead);
        }
        return files;
    }

    public void Dispose() => _history?.Dispose();

    private static bool IsRegister(string name) => name.StartsWith("register", StringComparison.Ordinal) && name.EndsWith(".yaml", StringComparison.Ordinal);

    private static string Written(string hash) => YamlScalar.Of(hash);
}
