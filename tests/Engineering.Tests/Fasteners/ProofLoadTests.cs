using Witnessmark.Engineering.Fasteners;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Fasteners;

public class ProofLoadTests(ITestOutputHelper output)
{
    /// <summary>Source: ISO 898-1 proof-load table in a supplier's reprint. It rounds to three figures, sometimes from the unrounded area, hence 0.5 %.</summary>
    [Theory]
    [InlineData("PF-01", "M10x1.5", "8.8")]
    [InlineData("PF-03", "M20x2.5", "8.8")]
    public void Proof_loads_agree_with_the_published_tables(string id, string thread, string strength)
    {
        var load = ProofLoad.Of(Bolt(thread, strength))!;
        var deviation = new Deviation("proof loads");
        Assert.True(deviation.Add($"{thread} {strength}", load.Value.In("N"), (double)Published.Output(id).Number) <= 0.005, load.Line);
        output.WriteLine(deviation.ToString());
    }

    /// <summary>Source: ISO 898-1 ultimate-load table in a reprint, row PF-05: Rm × As.</summary>
    [Fact]
    public void The_tensile_strength_gives_the_published_breaking_load() =>
        Assert.Equal(
            (double)Published.Output("PF-05").Number,
            (double)(PropertyClasses.Find("8.8")!.At(Q("18 mm"))!.Tensile.Number * StressArea.Of(Thread("M18x2.5"))!.Value.Number),
            159_000 * 0.005);

    [Fact]
    public void A_bolt_larger_than_the_standard_has_none() => Assert.Null(ProofLoad.Of(Bolt("M42x4.5", "10.9")));

    [Fact]
    public void A_class_that_does_not_exist_has_none() => Assert.Null(ProofLoad.Of(Bolt("M16x2", "11.9")));
}
