using System.Collections.Immutable;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Fasteners;

/// <summary>
/// Strength classes of steel bolts and screws, ISO 898-1:2013 table 3. Valid from M1.6 to M39 at room temperature; outside it
/// there is no row. For classes below 8.8 the yield row is ReL or Rpf.
/// </summary>
public static class PropertyClasses
{
    public static readonly ImmutableArray<StrengthClass> All =
    [
        Of("4.6", AnySize(400, 240, 225)),
        Of("4.8", AnySize(420, 340, 310)),
        Of("5.6", AnySize(500, 300, 280)),
        Of("5.8", AnySize(520, 420, 380)),
        Of("6.8", AnySize(600, 480, 440)),
        Of("8.8", UpToM16(800, 640, 580), AboveM16(830, 660, 600)),
        Of("9.8", UpToM16(900, 720, 650)),
        Of("10.9", AnySize(1040, 940, 830)),
        Of("12.9", AnySize(1220, 1100, 970)),
    ];

    /// <summary>Null for a class that the standard does not have.</summary>
    public static StrengthClass? Find(string name) => All.FirstOrDefault(c => c.Name == name);

    /// <summary>Sp in MPa, or null when class or size is not in the standard.</summary>
    public static Quantity? ProofStress(string name, Quantity diameter) => Find(name)?.At(diameter)?.Proof;

    private static StrengthClass Of(string name, params ImmutableArray<StrengthRow> rows) => new(name, rows);

    private static StrengthRow AnySize(int tensile, int yield, int proof) => Row(new(Mm(1.6m), true), 39m, tensile, yield, proof);

    private static StrengthRow UpToM16(int tensile, int yield, int proof) => Row(new(Mm(1.6m), true), 16m, tensile, yield, proof);

    private static StrengthRow AboveM16(int tensile, int yield, int proof) => Row(new(Mm(16m), false), 39m, tensile, yield, proof);

    private static StrengthRow Row(Bound low, decimal high, int tensile, int yield, int proof) =>
        new(new QuantityRange(low, new Bound(Mm(high), true)), MPa(tensile), MPa(yield), MPa(proof));

    private static Quantity Mm(decimal number) => Quantity.Of(number, "mm");

    private static Quantity MPa(int number) => Quantity.Of(number, "MPa");
}
