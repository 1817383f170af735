using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Wording;

/// <summary>How many of a thing there are.</summary>
/// <param name="At">Where that is written.</param>
internal readonly record struct SheetCount(int Number, Location At);

internal static class SheetCounts
{
    /// <summary>
    /// What the data sheet says, or null where it says nothing. A group that stands at each of several places has its
    /// count there: without a place in the step nobody knows how many are meant.
    /// </summary>
    public static SheetCount? CountOf(this Scope scope, Amount amount)
    {
        var name = amount.Thing.Value;
        if (scope.Fasteners(name) is { } group)
            return group.Count is { } bolts && (group.AtEach is null || amount.AtPlace is not null)
                ? new SheetCount(bolts.Value, bolts.At)
                : null;
        if (scope.Part(name) is { } part)
            return part.Count is { } pieces ? new SheetCount(pieces.Value, pieces.At) : null;
        return scope.Device(name) is { } device && device.Id.Value == name && !device.Tags.IsEmpty
            ? new SheetCount(device.Tags.Length, device.Id.At)
            : null;
    }

    /// <summary>Every amount of a step that handles things, with its fact.</summary>
    public static IEnumerable<(Fact Fact, Amount Amount)> Amounts(this Step step) =>
        step.Facts.Where(f => f.Word.HandlesThings() && f.Value is Amounts).SelectMany(f => ((Amounts)f.Value).All.Select(a => (f, a)));
}
