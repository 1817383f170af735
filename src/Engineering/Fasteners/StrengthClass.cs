using System.Collections.Immutable;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Fasteners;

/// <summary>A strength class of metric bolts after ISO 898-1, <c>10.9</c>, or a grade of inch bolts after SAE J429, <c>8</c>.</summary>
/// <param name="Rows">By size, smallest first; most have one.</param>
public sealed record StrengthClass(string Name, ImmutableArray<StrengthRow> Rows)
{
    /// <summary>Null for a size that it is not made in.</summary>
    public StrengthRow? At(Quantity diameter)
    {
        if (!Sensible.Positive(diameter, "length"))
            return null;
        foreach (var row in Rows)
            if (row.Sizes.Contains(diameter))
                return row;
        return null;
    }

    public Quantity Least => Rows[0].Sizes.Low!.Value.Value;

    public Quantity Most => Rows[^1].Sizes.High!.Value.Value;
}

/// <summary>The least a bolt of this class and size must bear.</summary>
/// <param name="Tensile">Rm, least.</param>
/// <param name="Yield">Rp0.2, ReL or Rpf, least.</param>
/// <param name="Proof">Sp: carried for a time of 10 or 15 s without lasting stretch.</param>
public sealed record StrengthRow(QuantityRange Sizes, Quantity Tensile, Quantity Yield, Quantity Proof);
