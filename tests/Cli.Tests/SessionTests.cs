using Witnessmark.Harness;

namespace Witnessmark.Cli.Tests;

/// <summary>Every file in Sessions is played and compared with what it shows. Adding a file adds a test.</summary>
public sealed class SessionTests
{
    public static TheoryData<string> Files => [.. Directory.EnumerateFiles(Repo.Path("tests", "Cli.Tests", "Sessions"), "*.session.txt").Select(f => Path.GetFileName(f)).Where(f => !f.Contains(".received.", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_person_sees_what_was_approved(string file)
    {
        using var session = new Session();
        Approved.Check($"Cli.Tests/Sessions/{file}", session.Play(Repo.Read("tests", "Cli.Tests", "Sessions", file)));
    }
}
