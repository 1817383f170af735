using Witnessmark.Engineering.Fasteners;
using Witnessmark.Harness;
using Witnessmark.Language.Quantities;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Fasteners;

/// <summary>Source: ISO 898-1:2013 table 3 in reprints, source column of property-classes.csv (all rows read in text).</summary>
public class PropertyClassTests
{
    [Fact]
    public void Every_published_class_and_size_has_its_strengths()
    {
        var rows = Csv.Reference("property-classes.csv");
        Assert.All(rows, row => Assert.Equal("text-found", row["verified"]));
        Assert.All(rows, row =>
        {
            var strength = PropertyClasses.Find(row["class"])!.At(row["size_rule"] == "d>16 mm" ? Q("20 mm") : Q("12 mm"))!;
            Assert.Equal(D(row["Rm_min_MPa"]), strength.Tensile.Number);
            Assert.Equal(D(row["Rp02_min_MPa"]), strength.Yield.Number);
            Assert.Equal(D(row["Sp_nom_MPa"]), strength.Proof.Number);
        });
    }

    [Fact]
    public void There_is_no_class_that_is_not_published() =>
        Assert.Equal(
            Csv.Reference("property-classes.csv").Select(r => r["class"]).Distinct().Order(StringComparer.Ordinal),
            PropertyClasses.All.Select(c => c.Name).Order(StringComparer.Ordinal));

    /// <summary>A public chart prints 314 lbf·ft for M20 8.8 because it misses this split: row TT-11 of worked-examples.csv.</summary>
    [Theory]
    [InlineData("16 mm", 580)]
    [InlineData("16.01 mm", 600)]
    [InlineData("20 mm", 600)]
    public void Class_8_8_is_stronger_above_M16(string diameter, int proof) =>
        Assert.Equal(Quantity.Of(proof, "MPa"), PropertyClasses.ProofStress("8.8", Q(diameter)));

    [Theory]
    [InlineData("10.8", "16 mm")]
    [InlineData("", "16 mm")]
    [InlineData("10,9", "16 mm")]
    [InlineData("10.9", "1.5 mm")]
    [InlineData("10.9", "42 mm")]
    [InlineData("9.8", "20 mm")]
    [InlineData("10.9", "-16 mm")]
    [InlineData("10.9", "16 kg")]
    public void What_the_standard_does_not_have_is_not_guessed(string strength, string diameter) =>
        Assert.Null(PropertyClasses.ProofStress(strength, Q(diameter)));
}
