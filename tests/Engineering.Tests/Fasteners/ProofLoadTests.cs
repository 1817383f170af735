using Witnessmark.Engineering.Fasteners;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Fasteners;

public class ProofLoadTests(ITestOutputHelper output)
{
    /// <summary>
    /// ISO 898-1 proof-load tables in suppliers' reprints: rows PF-01 and PF-03 of worked-examples.csv, and 203 kN for M20 10.9.
    /// Tables round to three figures, some from the unrounded area, hence 0.5 %.
    /// </summary>
    [Theory]
    [InlineData("M10x1.5", "8.8", 33.7)]
    [InlineData("M20x2.5", "8.8", 147)]
    [InlineData("M20x2.5", "10.9", 203)]
    public void Proof_loads_agree_with_the_published_tables(string thread, string strength, double published)
    {
        var load = ProofLoad.Of(Thread(thread), strength)!;
        var deviation = new Deviation("proof loads");
        Assert.True(deviation.Add($"{thread} {strength}", load.Value.In("kN"), published) <= 0.005, load.Line);
        output.WriteLine(deviation.ToString());
    }

    [Fact]
    public void A_bolt_larger_than_the_standard_has_none() => Assert.Null(ProofLoad.Of(Thread("M42x4.5"), "10.9"));

    [Fact]
    public void A_class_that_does_not_exist_has_none() => Assert.Null(ProofLoad.Of(Thread("M16x2"), "11.9"));
}
