using Witnessmark.Engineering.Lifting;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Lifting;

/// <summary>23 kg: load constant of the revised NIOSH lifting equation, NIOSH publication 94-110.</summary>
public class HandLiftTests
{
    [Theory]
    [InlineData("43 kg", 1, 1.87, false)]
    [InlineData("43 kg", 2, 0.93, true)]
    [InlineData("23 kg", 1, 1.00, true)]
    [InlineData("14 kg", 1, 0.61, true)]
    public void Each_has_his_share(string mass, int people, double index, bool fits)
    {
        var lift = HandLift.Of(Q(mass), people, Q("23 kg"))!;
        Assert.Equal(index, (double)lift.Index.Value, 0.005);
        Assert.Equal(fits, lift.Fits);
    }

    /// <summary>NIOSH gives its constant as 51 lb beside 23 kg (from memory).</summary>
    [Fact]
    public void Pounds_are_held_against_a_limit_in_kilograms() => Assert.Equal(1.006, (double)HandLift.Of(Q("51 lb"), 1, Q("23 kg"))!.Index.Value, 0.001);

    [Theory]
    [InlineData("0 kg", 1)]
    [InlineData("43 mm", 1)]
    [InlineData("43 kg", 0)]
    [InlineData("43 kg", 21)]
    public void Out_of_sense_it_says_nothing(string mass, int people) => Assert.Null(HandLift.Of(Q(mass), people, Q("23 kg")));
}
