using System.Collections.Immutable;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Fasteners;

/// <summary>
/// Grades of steel bolts and screws after SAE J429, in psi. Valid from 1/4 to 1-1/2 in at room temperature; outside it there is no row. A grade 2 bolt
/// longer than 6 in is made to grade 1. Source: the standard's table in reprints (tests/Reference/sae-j429.csv).
/// </summary>
public static class InchGrades
{
    private const decimal Smallest = 0.25m;
    private const decimal Largest = 1.5m;
    private const decimal LongestOfGrade2 = 6m;

    public static readonly ImmutableArray<StrengthClass> All =
    [
        new("1", [First(Largest, 60, 36, 33)]),
        new("2", [First(0.75m, 74, 57, 55), Above(0.75m, 60, 36, 33)]),
        new("5", [First(1m, 120, 92, 85), Above(1m, 105, 81, 74)]),
        new("8", [First(Largest, 150, 130, 120)]),
    ];

    /// <summary>Null for a grade that is not in the table.</summary>
    public static StrengthClass? Find(string name) => All.FirstOrDefault(g => g.Name == name);

    /// <summary>Sp in psi, or null when grade or size is not in the standard.</summary>
    /// <param name="length">Under the head; null counts as no longer than 6 in.</param>
    public static Quantity? ProofStress(string name, Quantity diameter, Quantity? length = null) =>
        Find(name == "2" && IsLong(length) ? "1" : name)?.At(diameter)?.Proof;

    private static bool IsLong(Quantity? length) =>
        length is { } l && Sensible.Positive(l, "length") && l.CompareTo(Quantity.Of(LongestOfGrade2, "in")) > 0;

    private static StrengthRow First(decimal most, int tensile, int yield, int proof) => Row(new(Inch(Smallest), true), most, tensile, yield, proof);

    private static StrengthRow Above(decimal over, int tensile, int yield, int proof) => Row(new(Inch(over), false), Largest, tensile, yield, proof);

    private static StrengthRow Row(Bound low, decimal high, int tensile, int yield, int proof) =>
        new(new QuantityRange(low, new Bound(Inch(high), true)), Psi(tensile), Psi(yield), Psi(proof));

    private static Quantity Inch(decimal number) => Quantity.Of(number, "in");

    private static Quantity Psi(int thousands) => Quantity.Of(thousands * 1000, "psi");
}
