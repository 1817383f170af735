using LibGit2Sharp;
using Witnessmark.Harness;

namespace Witnessmark.History.Tests;

/// <summary>The demo's two procedures through five versions, as a workshop would write them: the changes stand in <c>Versions</c>.</summary>
public sealed class FiveVersions : IDisposable
{
    public const int Count = 5;

    private static readonly string[] Files = ["wheel-end/wb-40.md", "common/wb-60.md", "machines/okr-34.yaml"];

    public FiveVersions()
    {
        Workshop.WithDemo();
        Workshop.Run("release WB-60 --by RK");
        Workshop.Run("release WB-40 --by RK");
        Workshop.Commit("Release both");
        Workshop.Git.ApplyTag("v1");
        foreach (var patch in Directory.EnumerateFiles(Repo.Path("tests", "History.Tests", "Versions"), "*.diff").Order(StringComparer.Ordinal))
        {
            var texts = Files.ToDictionary(f => f, Workshop.Read, StringComparer.Ordinal);
            LineChange.Apply(File.ReadAllText(patch), texts);
            foreach (var (file, text) in texts)
                Workshop.Write(file, text);
            var name = Path.GetFileNameWithoutExtension(patch);
            Workshop.Commit(name[2..]);
            Workshop.Git.ApplyTag($"v{name[0]}");
        }
    }

    internal Kept Workshop { get; } = new();

    public void Dispose() => Workshop.Dispose();
}
