using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Rendering.Messages;

namespace Witnessmark.Rules.Tests.Workshops;

public sealed class DemoTests
{
    [Fact]
    public void The_small_workshop_has_no_finding() =>
        Assert.Empty(DemoWorkshop.Whole.Findings().Select(f => new FindingText("procedures", Ink.None).Short(f)));

    [Fact]
    public void The_showcase_has_no_finding() =>
        Assert.Empty(Pipeline.Check(Repo.Files(Repo.Path("procedures"))).Findings.Select(f => new FindingText("procedures", Ink.None).Short(f)));
}
