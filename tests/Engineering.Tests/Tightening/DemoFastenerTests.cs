using Witnessmark.Engineering.Tightening;
using Witnessmark.Harness;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Tightening;

/// <summary>Every group of the demo scenario. Source: demo-fasteners.csv, worked before and without this code.</summary>
public class DemoFastenerTests(ITestOutputHelper output)
{
    public static TheoryData<string> Groups => [.. Csv.Reference("demo-fasteners.csv").Select(r => r["group"])];

    [Theory]
    [MemberData(nameof(Groups))]
    public void A_group_of_the_demo_comes_to_its_numbers(string group)
    {
        var row = Csv.Reference("demo-fasteners.csv").Single(r => r["group"] == group);
        var torque = T(row["torque"]);
        var window = TorqueWindow.For(Group(row["thread"], row["class"], D(row["k"]), D(row["proof_fraction"])), HouseLimits.Default)!;
        var scatter = PreloadScatter.Of(window, torque, HouseLimits.Default)!;

        Equal(row["computed_target_N.m"], window.Target.Value.Number);
        Equal(row["beside_lbf.ft"], DualUnits.Beside(torque.Target)!.Value.Number);
        Equal(row["preload_kN"], window.PreloadAt(torque.Target)!.Value.Number);
        Equal(row["share_of_proof"], scatter.Aimed);
        Equal(row["after_scatter"], scatter.RootSumSquare.Value);
        Assert.Equal(row["passes_95"] == "yes", scatter.RootSumSquare.Value <= HouseLimits.Default.TightenedProof);
        Assert.True(window.Contains(torque.Target));
        output.WriteLine($"{group}: {window.Target.Line}; {scatter.RootSumSquare.Line}");
    }

    /// <summary>Equal as far as the decimals that stand in the table.</summary>
    private static void Equal(string expected, decimal computed)
    {
        var decimals = expected.Contains('.') ? expected.Length - expected.IndexOf('.') - 1 : 0;
        Assert.Equal(D(expected), Math.Round(computed, decimals, MidpointRounding.AwayFromZero));
    }
}
