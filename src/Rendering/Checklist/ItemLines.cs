using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist.InWords;

namespace Witnessmark.Rendering.Checklist;

/// <summary>What the data sheet says about the load, the oil space or the test of a step: numbers that are needed before the work.</summary>
internal static class ItemLines
{
    public static IEnumerable<(string Key, string Text)> Of(SheetStep step, SheetContext context)
    {
        var words = context.Words;
        foreach (var load in Named(step, FactWord.Lift).Select(context.Scope.Load).OfType<LoadItem>())
            yield return (words.Load, Load(load, words));
        foreach (var space in Named(step, FactWord.Drain).Select(context.Scope.Space).OfType<FluidSpace>())
            yield return (words.Drains, Space(space, into: true, words));
        foreach (var space in Named(step, FactWord.Fill).Select(context.Scope.Space).OfType<FluidSpace>())
            yield return (words.Takes, Space(space, into: false, words));
        foreach (var test in Named(step, FactWord.Test).Select(context.ScopeOf(step).Test).OfType<TestItem>())
            yield return (words.Test, Test(test, words));
    }

    private static IEnumerable<string> Named(SheetStep step, FactWord word) =>
        step.Step.Value<NameList>(word)?.Names.Select(n => step.Fills.In(n.Value)) ?? [];

    private static string Load(LoadItem load, Words words) => Joined(
        Both(load.Mass?.Value),
        load.Gear is { } gear ? load.Angle is { } angle ? $"{gear.Value} {words.At} {angle.Value}" : gear.Value : null,
        Both(load.Radius?.Value, words.Radius));

    private static string Space(FluidSpace space, bool into, Words words) => Joined(
        space.Fluid is { } fluid ? DeclaredName.Spoken(fluid.Value) : DeclaredName.Spoken(space.Id.Value),
        Both(space.Holds?.Value),
        into && space.DrainsInto is { } container ? $"{words.Into} {DeclaredName.Spoken(container.Value)}" : null,
        !into && space.FullWhen is { } full ? $"{words.FullWhen} {full.Value}" : null);

    private static string Test(TestItem test, Words words) => Joined(
        test.Medium?.Value,
        Both(test.Pressure?.Value),
        Both(test.AtMost?.Value, words.NeverAbove),
        Both(test.Settle?.Value, words.Settle),
        Both(test.Hold?.Value, words.HoldFor));

    private static string? Both(Quantity? quantity, string before = "") =>
        quantity is { } q ? $"{before} {QuantityWords.Both(q)}".TrimStart() : null;

    private static string Joined(params string?[] parts) => string.Join(" · ", parts.Where(p => !string.IsNullOrEmpty(p)));
}
