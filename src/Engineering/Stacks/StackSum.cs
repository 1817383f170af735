using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Stacks;

/// <summary>So many pieces of one part, in a stack.</summary>
internal sealed record StackShare(int Count, PartKind Part, Toleranced Thickness);

/// <summary>What stands in a stack, by part: the part with most pieces first, as the ladder is read.</summary>
internal static class StackSum
{
    private const int MostPieces = 10_000;

    /// <summary>Null when a part is unknown or has no thickness, or the order is empty or longer than any stack.</summary>
    public static ImmutableArray<StackShare>? Of(PartStack stack, Func<string, PartKind?> part)
    {
        // an order can be written as a million times two pieces: count before it is unrolled
        if (stack.Order.Sum(r => (long)Math.Max(0, r.Times) * r.Pieces.Length) is 0 or > MostPieces)
            return null;
        var shares = ImmutableArray.CreateBuilder<StackShare>();
        foreach (var pieces in stack.Positions().GroupBy(p => p.Piece.Part.Value, StringComparer.Ordinal))
        {
            if (part(pieces.Key) is not { Thickness.Value: { } thickness } kind || !Sensible.Positive(thickness.Target, "length"))
                return null;
            if (thickness.Tolerance is { } tolerance && !Sensible.Is(tolerance, "length"))
                return null;
            shares.Add(new StackShare(pieces.Count(), kind, thickness));
        }
        return [.. shares.OrderByDescending(s => s.Count)];
    }
}
