using System.Globalization;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Sheets;

/// <summary>The ladder of a stack that is fitted: one cell a position, in building order.</summary>
internal static class StackAsks
{
    private const string TeethOutside = "outer";

    public static IEnumerable<Ask> Of(Amount amount, StepNames names)
    {
        if (names.Stack(amount.Thing.Value) is not { } stack)
            return [];
        var cells = stack.Positions().Select(p => Cell(p, stack, names)).OfType<LadderCell>();
        return [new StackAsk(stack.Id.Value, stack, [.. cells])];
    }

    private static LadderCell? Cell(StackPosition position, PartStack stack, StepNames names)
    {
        if (names.Part(position.Piece.Part.Value) is not { } part)
            return null;
        var label = part.Letters + position.OfPart.ToString(CultureInfo.InvariantCulture);
        return new LadderCell(
            position.Number, label, part, part.Spline?.Value == TeethOutside, position.Piece.FacedTo?.Value);
    }
}
