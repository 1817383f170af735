using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Stack;

/// <summary>A stack position by position, each with its part from the data sheet.</summary>
internal sealed record Ladder(PartStack Stack, ImmutableArray<Rung> Rungs)
{
    /// <summary>More positions than any stack has: an order that was mistyped is not unrolled to the end.</summary>
    private const int MostRungs = 400;

    public static IEnumerable<Ladder> Of(Machine machine) =>
        machine.Stacks.Select(s => new Ladder(
            s,
            [.. s.Positions().Take(MostRungs).Select(p => new Rung(p.Number, p.Piece, p.OfPart, machine.Parts.Find(p.Piece.Part.Value)))]));

    /// <summary>The kinds of part in it, in the order in which they first appear.</summary>
    public IEnumerable<PartKind> Parts => Rungs.Select(r => r.Part).OfType<PartKind>().DistinctBy(p => p.Id.Value);

    public int CountOf(PartKind part) => Rungs.Count(r => r.Part == part);

    /// <summary><c>piston</c>, or <c>the first end</c> when the sheet gives the end no name.</summary>
    public string FromName => Stack.From?.Value ?? "the first end";

    public string ToName => Stack.To?.Value ?? "the last end";
}

/// <param name="Number">From 1, in building order.</param>
/// <param name="OfPart">From 1, among the pieces of the same part.</param>
/// <param name="Part">Null when the order names a part that the sheet does not have: a finding of its own.</param>
internal sealed record Rung(int Number, StackPiece Piece, int OfPart, PartKind? Part)
{
    public bool TurnsWithHub => Part?.Spline?.Value == "inner";

    public bool StandsStill => Part?.Spline?.Value == "outer";

    /// <summary><c>friction disc D1</c></summary>
    public string Name => $"{Piece.Part.Spoken()} {Part?.Mark?.Value}{OfPart}";
}
