using System.Collections.Immutable;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Fasteners;

/// <summary>A strength class of bolts after ISO 898-1: <c>10.9</c>.</summary>
/// <param name="Rows">By size, smallest first; most classes have one.</param>
public sealed record PropertyClass(string Name, ImmutableArray<StrengthRow> Rows)
{
    /// <summary>Null for a size that the class is not made in.</summary>
    public StrengthRow? At(Quantity diameter)
    {
        if (!Sensible.Positive(diameter, "length"))
            return null;
        foreach (var row in Rows)
            if (row.Sizes.Contains(diameter))
                return row;
        return null;
    }
}

/// <summary>The least a bolt of this class and size must bear.</summary>
/// <param name="Tensile">Rm, least.</param>
/// <param name="Yield">Rp0.2, ReL or Rpf, least.</param>
/// <param name="Proof">Sp: carried for 15 s without lasting stretch.</param>
public sealed record StrengthRow(QuantityRange Sizes, Quantity Tensile, Quantity Yield, Quantity Proof);
