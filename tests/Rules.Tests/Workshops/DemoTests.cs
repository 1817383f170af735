using Witnessmark.Rendering.Messages;

namespace Witnessmark.Rules.Tests.Workshops;

public sealed class DemoTests
{
    [Fact]
    public void The_demo_workshop_has_no_finding() =>
        Assert.Empty(DemoWorkshop.Whole.Findings().Select(f => new FindingText("procedures", Ink.None).Short(f)));
}
