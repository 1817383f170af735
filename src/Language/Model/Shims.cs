using System.Collections.Immutable;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>Thin rings put together to one thickness that sets a play: the shims under a hub retainer.</summary>
public sealed record ShimItem(Located<string> Id, DataNode Node) : IItem
{
    public const int UsualMost = 5;

    /// <summary>Thicknesses in stock.</summary>
    public ImmutableArray<Located<Quantity>> Sizes { get; init; } = [];

    /// <summary>Pieces in one pack; null: <see cref="UsualMost"/>.</summary>
    public Located<int>? Most { get; init; }

    /// <summary>looser or tighter: what a thicker pack makes of the play.</summary>
    public Located<string>? ThickerIs { get; init; }

    /// <summary>Play that is accepted.</summary>
    public Located<QuantityRange>? Play { get; init; }

    /// <summary>Play aimed at; null: the middle of <see cref="Play"/>.</summary>
    public Located<Quantity>? Target { get; init; }

    /// <summary>Thickness of the whole pack as the machine was built.</summary>
    public Located<Quantity>? AsBuilt { get; init; }

    /// <summary>Plays that can be measured on a machine that was taken apart.</summary>
    public Located<QuantityRange>? Plausible { get; init; }

    public Located<string>? What { get; init; }

    public Located<string>? Basis { get; init; }
}
