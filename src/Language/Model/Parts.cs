using System.Collections.Immutable;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Language.Model;

public sealed record PartKind(Located<string> Id, DataNode Node) : IItem
{
    public Located<int>? Count { get; init; }

    /// <summary>Letter on ladder and drawing: D for a disc.</summary>
    public Located<string>? Mark { get; init; }

    public Located<Toleranced>? Thickness { get; init; }

    public Located<Quantity>? WornAt { get; init; }

    /// <summary>inner or outer: where its teeth are.</summary>
    public Located<string>? Spline { get; init; }

    /// <summary>one, both or none: how many sides carry facing.</summary>
    public Located<string>? FacedSide { get; init; }

    /// <summary>free, inspect or never.</summary>
    public Located<string>? Reuse { get; init; }

    public Located<string>? Replace { get; init; }

    public Located<string>? What { get; init; }

    /// <summary>What a seal keeps apart: gear oil and hydraulic oil.</summary>
    public ImmutableArray<Located<string>> Between { get; init; } = [];

    public Located<string>? Basis { get; init; }

    /// <summary>Its mark, or its first letters where none is declared.</summary>
    public string Letters => Mark?.Value ?? DeclaredName.Letters(Id.Value);
}

/// <summary>Parts stacked in an order in a cavity, from one end to the other.</summary>
public sealed record PartStack(Located<string> Id, DataNode Node) : IItem
{
    public Located<Toleranced>? Cavity { get; init; }

    /// <summary>The end that building starts from: piston.</summary>
    public Located<string>? From { get; init; }

    /// <summary>The other end: ring.</summary>
    public Located<string>? To { get; init; }

    public ImmutableArray<StackRow> Order { get; init; } = [];

    public Located<QuantityRange>? Clearance { get; init; }

    /// <summary>Travel at which the piston leaves its seal bore.</summary>
    public Located<Quantity>? SealOverrun { get; init; }

    public Located<Quantity>? Margin { get; init; }

    public Located<string>? Basis { get; init; }

    /// <summary>Every position in building order, numbered from 1: E1 D1 P1 … D9 E2 needs the marks of the parts.</summary>
    public IEnumerable<StackPosition> Positions()
    {
        var position = 0;
        var ofPart = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var row in Order)
            for (var turn = 0; turn < row.Times; turn++)
                foreach (var piece in row.Pieces)
                {
                    ofPart[piece.Part.Value] = ofPart.GetValueOrDefault(piece.Part.Value) + 1;
                    yield return new StackPosition(++position, piece, ofPart[piece.Part.Value]);
                }
    }
}

/// <summary>A line of the order: <c>8 x steel-plate, friction-disc</c>.</summary>
public sealed record StackRow(int Times, ImmutableArray<StackPiece> Pieces, Location At);

/// <param name="FacedTo">The end that the faced side looks at: piston, ring; null when none is written.</param>
public sealed record StackPiece(Located<string> Part, Located<string>? FacedTo);

/// <param name="Number">From 1, in building order.</param>
/// <param name="OfPart">From 1, among the pieces of the same part.</param>
public sealed record StackPosition(int Number, StackPiece Piece, int OfPart);
