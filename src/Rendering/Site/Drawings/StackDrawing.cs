using Witnessmark.Engineering.Stacks;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Wording;
using Witnessmark.Rendering.Checklist.InWords;
using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Site.Drawings;

/// <summary>A stack as the data sheet orders it, closed in its cavity.</summary>
internal static class StackDrawing
{
    /// <summary>More pieces than anybody stacks: a slip in the data sheet, and no drawing.</summary>
    private const int MostPieces = 200;

    private const string Inner = "inner";

    public static Drawing? Of(string id, PartStack stack, Func<string, PartKind?> part, Words words)
    {
        if (stack.Order.Sum(r => (long)Math.Max(0, r.Times) * r.Pieces.Length) is 0 or > MostPieces)
            return null;
        var closed = Closed(stack, part, words);
        var caption = $"{words.SectionOfStack}: {closed.From} – {closed.To}";
        return new Drawing(StackInCavity.Draw(id, closed, words), caption);
    }

    private static ClosedStack Closed(PartStack stack, Func<string, PartKind?> part, Words words) => new(
        words.StackEnd(Tongue.AsWritten, stack, stack.From?.Value),
        words.StackEnd(Tongue.AsWritten, stack, stack.To?.Value),
        [.. stack.Positions().Select(p => One(p, part(p.Piece.Part.Value), stack, words))],
        stack.Clearance is { } clearance ? new QuantityWords(words).Text(clearance.Value) : null,
        StackHeight.Of(stack, part) is { } height ? Millimetres(height.Clearance.Value) : null);

    private static StackedPart One(StackPosition position, PartKind? kind, PartStack stack, Words words)
    {
        var name = position.Piece.Part.Value;
        return new StackedPart(
            $"{kind?.Letters ?? DeclaredName.Letters(name)}{Say.Number(position.OfPart)}",
            DeclaredName.Spoken(name),
            kind?.Thickness is { } thickness ? Millimetres(thickness.Value.Target) : null,
            kind?.Spline?.Value != Inner,
            position.Piece.FacedTo is { } end ? words.StackEnd(Tongue.AsWritten, stack, end.Value) : null,
            position.Piece.FacedTo?.Value == stack.From?.Value);
    }

    private static decimal? Millimetres(Quantity length) => length.Unit.Kind == "length" ? length.In(UnitTable.Get("mm")).Number : null;
}
