using Witnessmark.Engineering.Fasteners;
using Witnessmark.Harness;
using Witnessmark.Language.Quantities;
using static Witnessmark.Engineering.Tests.Given;

namespace Witnessmark.Engineering.Tests.Fasteners;

/// <summary>Source: SAE J429 in reprints, source column of sae-j429.csv (all rows read in text). Grade 8.2 is in none of them and so not in ours.</summary>
public class InchGradeTests
{
    [Fact]
    public void Every_published_grade_and_size_has_its_strengths()
    {
        var rows = Csv.Reference("sae-j429.csv");
        Assert.Equal(6, rows.Count);
        Assert.All(rows, row => Assert.Equal("text-found", row["verified"]));
        Assert.All(rows, row =>
        {
            var strength = InchGrades.Find(row["grade"])!.At(Q($"{row["d_max_in"]} in"))!;
            Assert.Equal(D(row["tensile_min_psi"]), strength.Tensile.Number);
            Assert.Equal(D(row["yield_min_psi"]), strength.Yield.Number);
            Assert.Equal(D(row["proof_psi"]), strength.Proof.Number);
            Assert.Equal((double)D(row["proof_MPa"]), strength.Proof.In("MPa"), 0.05);
        });
    }

    [Fact]
    public void There_is_no_grade_that_is_not_published() =>
        Assert.Equal(Csv.Reference("sae-j429.csv").Select(r => r["grade"]).Distinct(), InchGrades.All.Select(g => g.Name));

    [Theory]
    [InlineData("2", "0.75 in", 55000)]
    [InlineData("2", "0.76 in", 33000)]
    [InlineData("5", "1 in", 85000)]
    [InlineData("5", "1.125 in", 74000)]
    [InlineData("8", "0.25 in", 120000)]
    [InlineData("8", "1.5 in", 120000)]
    [InlineData("8", "12.7 mm", 120000)]
    public void Strength_changes_where_the_standard_says(string grade, string diameter, int proof) =>
        Assert.Equal(Quantity.Of(proof, "psi"), InchGrades.ProofStress(grade, Q(diameter)));

    /// <summary>Note of the grade 2 row in sae-j429.csv.</summary>
    [Theory]
    [InlineData("2", "6 in", 55000)]
    [InlineData("2", "6.25 in", 33000)]
    [InlineData("2", "200 mm", 33000)]
    [InlineData("5", "8 in", 85000)]
    public void A_long_bolt_of_grade_2_bears_what_grade_1_does(string grade, string length, int proof) =>
        Assert.Equal(Quantity.Of(proof, "psi"), InchGrades.ProofStress(grade, Q("0.5 in"), Q(length)));

    [Theory]
    [InlineData("8.8", "0.5 in")]
    [InlineData("8.2", "0.5 in")]
    [InlineData("", "0.5 in")]
    [InlineData("8", "0.19 in")]
    [InlineData("8", "1.75 in")]
    [InlineData("8", "-0.5 in")]
    [InlineData("8", "0.5 lb")]
    public void What_the_standard_does_not_have_is_not_guessed(string grade, string diameter) =>
        Assert.Null(InchGrades.ProofStress(grade, Q(diameter)));
}
