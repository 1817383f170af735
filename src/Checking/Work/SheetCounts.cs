using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Work;

/// <summary>How many of a thing there are.</summary>
/// <param name="At">Where that is written.</param>
internal readonly record struct SheetCount(int Number, Location At);

/// <summary>An amount that a step handles, and the fact that says so.</summary>
internal readonly record struct HandledAmount(StepInPlace Place, Fact Fact, Amount Amount);

internal static class SheetCounts
{
    private static readonly Once<Procedure, ImmutableArray<HandledAmount>> InProcedure = new(p => [.. Find(p)]);

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

    /// <summary>Every amount of the steps that handle things, with its fact.</summary>
    public static ImmutableArray<HandledAmount> Amounts(this Procedure procedure) => InProcedure.Of(procedure);

    private static IEnumerable<HandledAmount> Find(Procedure procedure)
    {
        foreach (var (place, fact) in procedure.StepFacts())
            if (fact.Word.HandlesThings() && fact.Value is Amounts amounts)
                foreach (var amount in amounts.All)
                    yield return new HandledAmount(place, fact, amount);
    }
}
