using Witnessmark.Harness;

namespace Witnessmark.Records.Tests;

/// <summary>The registers of the demo and of the showcase have them as they stand, and the copies that their records were typed from.</summary>
public sealed class DemoRegister
{
    [Fact]
    public void It_has_the_demo_as_it_stands_and_the_copies_of_its_records() => new StampedWorkshop(Repo.OneBrake).HoldsItsRegister();

    [Fact]
    public void It_has_the_showcase_as_it_stands_and_the_copies_of_its_records() => new StampedWorkshop(Repo.Showcase).HoldsItsRegister();
}
