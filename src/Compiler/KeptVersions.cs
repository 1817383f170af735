using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Compiler;

/// <summary>The files of the workshop on the day a version was put on record.</summary>
/// <param name="Files">Null where nobody has kept them.</param>
/// <param name="Why">Why there are none, in a sentence; empty where there are.</param>
public sealed record KeptFiles(IReadOnlyList<StoredFile>? Files, string Why);

/// <summary>Where texts of earlier versions come from: the command line asks git.</summary>
/// <param name="Here">The files as they lie here.</param>
public sealed record KeptVersions(IReadOnlyList<StoredFile> Here, Func<ReleasedVersion, KeptFiles> Of)
{
    public static readonly KeptVersions None = new([], _ => new KeptFiles(null, "Its files were not asked for."));
}
