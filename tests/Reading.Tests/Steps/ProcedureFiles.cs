using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.Tests.Steps;

internal static class ProcedureFiles
{
    /// <summary>Paths from the root of the repository.</summary>
    public static IEnumerable<string> In(params string[] folder) =>
        Directory.EnumerateFiles(Repo.Path(folder), "*.md", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(Repo.Root, f).Replace('\\', '/'))
            // a translation is read with what it translates
            .Where(f => !f.EndsWith(".es.md", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);

    public static SourceText Source(string path) => new(path, Repo.Read(path));
}

internal static class Told
{
    /// <summary>Fails with everything that was found.</summary>
    public static void Nothing(FindingList findings) => Assert.True(findings.Count == 0, All(findings));

    /// <summary>Findings as a list that a failing test can show.</summary>
    public static string All(FindingList findings) =>
        string.Join('\n', findings.InReadingOrder().Select(f => $"{f.At.Source.Path}:{f.At.Start.Line}:{f.At.Start.Column} {f.Rule.Name}: {f.Found} {f.PutRight}"));
}
