using System.Xml.Linq;
using Witnessmark.Harness;

namespace Witnessmark.House.Tests;

/// <summary>The repository as its files, without what is built or brought in.</summary>
internal static class House
{
    private static readonly string[] NotOurs = ["bin", "obj", "out", "TestResults", "BenchmarkDotNet.Artifacts", "__mismatch__"];

    private static readonly string[] TouchTheOutside = ["src/Cli/", "src/Press/", "src/History/"];

    /// <summary>Does no IO: everything under src but the command line and the press.</summary>
    public static bool IsCore(string path) => !TouchTheOutside.Any(o => path.StartsWith(o, StringComparison.Ordinal));

    public static IEnumerable<string> CoreSources => Files("src", ".cs").Where(IsCore);

    /// <summary>Paths from the top, with forward slashes.</summary>
    public static IEnumerable<string> Files(string folder = "", string ending = "") => Below(Repo.Path(folder.Split('/')))
        .Where(f => f.EndsWith(ending, StringComparison.Ordinal) && !f.Contains(".received.", StringComparison.Ordinal))
        .Select(f => Path.GetRelativePath(Repo.Root, f).Replace('\\', '/'))
        .Order(StringComparer.Ordinal);

    public static IEnumerable<string> ProjectFiles => Files("src", ".csproj").Concat(Files("tests", ".csproj"));

    public static string Read(string path) => File.ReadAllText(Repo.Path(path.Split('/')));

    public static bool Exists(string path) => File.Exists(Repo.Path(path.Split('/')));

    public static IEnumerable<string> ProjectReferences(string projectFile) =>
        Included(projectFile, "ProjectReference").Select(i => Path.GetFileNameWithoutExtension(i));

    public static IEnumerable<string> PackageReferences(string projectFile) => Included(projectFile, "PackageReference");

    private static IEnumerable<string> Included(string projectFile, string what) =>
        XDocument.Parse(Read(projectFile)).Descendants(what).Select(e => e.Attribute("Include")!.Value.Replace('\\', '/'));

    private static IEnumerable<string> Below(string folder)
    {
        foreach (var file in Directory.EnumerateFiles(folder))
            yield return file;
        foreach (var inner in Directory.EnumerateDirectories(folder))
            if (!NotOurs.Contains(Path.GetFileName(inner)) && Path.GetFileName(inner) != ".git")
                foreach (var file in Below(inner))
                    yield return file;
    }
}
