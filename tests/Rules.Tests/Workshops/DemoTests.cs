using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Rendering.Messages;

namespace Witnessmark.Rules.Tests.Workshops;

public sealed class DemoTests
{
    [Fact]
    public void The_small_workshop_has_no_finding() =>
        Assert.Empty(DemoWorkshop.Whole.Findings().Select(f => new FindingText("procedures", Ink.None).Short(f)));

    public static TheoryData<string> Showcase => [.. Directory.EnumerateDirectories(Repo.Path("procedures")).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Showcase))]
    public void No_workshop_of_the_showcase_has_a_finding(string workshop) =>
        Assert.Empty(Pipeline.Check(Repo.Files(Repo.Path("procedures", workshop))).Findings.Select(f => new FindingText(workshop, Ink.None).Short(f)));
}
