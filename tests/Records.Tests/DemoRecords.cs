using Witnessmark.Harness;
using Witnessmark.Records.Receiving;

namespace Witnessmark.Records.Tests;

/// <summary>The sign-offs of the demo, and of unit 14 in the showcase, hold against what stands there today. Both feed a page on wear.</summary>
public sealed class DemoRecords
{
    private static readonly StampedWorkshop Demo = new(Repo.OneBrake), Showcase = new(Repo.Showcase);

    public static TheoryData<string, ReceptionState> All => new()
    {
        { "records/2031-06-11-unit-14-CL.yaml", ReceptionState.Complete },
        { "records/2031-06-13-unit-14-CR.yaml", ReceptionState.Open },
        { "records/2033-07-19-unit-14-CL.yaml", ReceptionState.Complete },
    };

    [Theory]
    [MemberData(nameof(All))]
    public void A_record_of_the_demo_holds_against_it(string path, ReceptionState state) => Demo.HoldsRecord(path, state);

    [Theory]
    [MemberData(nameof(All))]
    public void A_record_of_the_showcase_holds_against_it(string path, ReceptionState state) => Showcase.HoldsRecord(path, state);

    [Fact]
    public void Every_record_is_held()
    {
        Assert.Equal(All.Select(r => r.Data.Item1), Demo.RecordPaths);
        Assert.Equal(All.Select(r => r.Data.Item1), Showcase.RecordPaths);
    }
}
