using System.Runtime.CompilerServices;
using Witnessmark.Language.Text;

namespace Witnessmark.Harness;

/// <summary>Where the tests find what they read.</summary>
public static class Repo
{
    public static string Root { get; } = FindRoot(ThisFile());

    /// <summary>A small workshop that holds still while the showcase in <c>procedures</c> grows: one brake, one common part, its register and records.</summary>
    public static string OneBrake { get; } = Path("tests", "Workshops", "one-brake");

    /// <summary>The workshop that a mechanic is shown: one machine, all procedures of a job. It grows.</summary>
    public static string Showcase { get; } = Path("procedures", "cressel-ridge");

    /// <summary>A job with all of its parts as it was first tried, findings and all.</summary>
    public static string Trial { get; } = Path("tests", "Workshops", "trial");

    public static string Path(params string[] parts) => System.IO.Path.Combine([Root, .. parts]);

    public static string Read(params string[] parts) => File.ReadAllText(Path(parts));

    /// <summary>All files below a folder as the command line would hand them over, paths relative to it; no records.</summary>
    public static IReadOnlyList<RawFile> Files(string folder) => [.. Below(folder).Where(f => !f.Path.StartsWith("records/", StringComparison.Ordinal))];

    /// <summary>The sign-offs that came back to a workshop.</summary>
    public static IReadOnlyList<RawFile> Records(string folder) => [.. Below(folder).Where(f => f.Path.StartsWith("records/", StringComparison.Ordinal))];

    private static IEnumerable<RawFile> Below(string folder) =>
    [
        .. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Where(f => f.EndsWith(".md", StringComparison.Ordinal) || f.EndsWith(".yaml", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(f => RawFile.Of(System.IO.Path.GetRelativePath(folder, f).Replace('\\', '/'), File.ReadAllBytes(f))),
    ];

    private static string ThisFile([CallerFilePath] string path = "") => path;

    private static string FindRoot(string from)
    {
        var folder = new FileInfo(from).Directory;
        while (folder is not null && !File.Exists(System.IO.Path.Combine(folder.FullName, "src", "Witnessmark.slnx")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException($"no workshop of ours above {from}");
    }
}
