using Witnessmark.Compiler;
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
            var moment = _history.FirstWith(Register.IsOne, line => line.Contains($"procedure: {version.Procedure},", StringComparison.Ordinal) && line.Contains($"hash: {Written(version.Hash.Value)}", StringComparison.Ordinal));
            _known[version.Hash.Value] = files = moment is null ? null : _history.Files(moment, WorkshopFolder.IsRead);
        }
        return files;
    }

    /// <param name="here">The files of the workshop as they lie here.</param>
    public KeptVersions Beside(IReadOnlyList<RawFile> here) => new([.. here.Select(StoredFile.Of)], Kept);

    /// <summary>The same, with the reason where there are none.</summary>
    private KeptFiles Kept(ReleasedVersion version) => Files(version) is { } files
        ? new KeptFiles(files, "")
        : new KeptFiles(null, _history is null ? $"No git here has kept the files of {version.Version}." : $"Git has no commit in which the register has {version.Version}.");

    public void Dispose() => _history?.Dispose();

    private static string Written(string hash) => YamlScalar.Of(hash);
}
