using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
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
            yield return (words.Load, Load(load, context));
        foreach (var space in Named(step, FactWord.Drain).Select(context.Scope.Space).OfType<FluidSpace>())
            yield return (words.Drains, Space(space, into: true, context));
        foreach (var space in Named(step, FactWord.Fill).Select(context.Scope.Space).OfType<FluidSpace>())
            yield return (words.Takes, Space(space, into: false, context));
        foreach (var test in Named(step, FactWord.Test).Select(context.ScopeOf(step).Test).OfType<TestItem>())
            yield return (words.Test, Test(test, context));
    }

    private static IEnumerable<string> Named(SheetStep step, FactWord word) =>
        step.Step.Value<NameList>(word)?.Names.Select(n => step.Fills.In(n.Value)) ?? [];

    private static string Load(LoadItem load, SheetContext context) => Joined(
        Both(load.Mass?.Value),
        load.Gear is { } gear ? load.Angle is { } angle ? $"{context.Tongue.Name(gear.Value)} {context.Words.AtAngle} {angle.Value.NumberText}°" : context.Tongue.Name(gear.Value) : null,
        Both(load.Radius?.Value, context.Words.Radius));

    private static string Space(FluidSpace space, bool into, SheetContext context) => Joined(
        context.Tongue.Name((space.Fluid ?? space.Id).Value),
        Both(space.Holds?.Value),
        into && space.DrainsInto is { } container ? $"{context.Words.Into} {context.Tongue.Name(container.Value)}" : null,
        !into && space.FullWhen is { } full ? $"{context.Words.FullWhen} {context.Tongue.Text(full.Value)}" : null);

    private static string Test(TestItem test, SheetContext context) => Joined(
        Text(test.What, context),
        Text(test.Load, context),
        Both(test.Speed?.Value),
        Text(test.Medium, context),
        Both(test.Pressure?.Value),
        Both(test.AtMost?.Value, context.Words.NeverAbove),
        Both(test.Settle?.Value, context.Words.Settle),
        Both(test.Hold?.Value, context.Words.HoldFor),
        Passes(test, context),
        Both(test.SecondLook?.Value, context.Words.LookAgain));

    private static string? Passes(TestItem test, SheetContext context) =>
        test.PassesWhen is { } when ? $"{context.Words.PassesWhen} {context.Conditions(Fills.None).Of(when)}"
        : Text(test.Passes, context) is { } words ? $"{context.Words.Passes} {words}"
        : null;

    private static string? Text(Located<string>? text, SheetContext context) => text is { } written ? context.Tongue.Text(written.Value) : null;

    private static string? Both(Quantity? quantity, string before = "") =>
        quantity is { } q ? $"{before} {QuantityWords.Both(q)}".TrimStart() : null;

    private static string Joined(params string?[] parts) => string.Join(" · ", parts.Where(p => !string.IsNullOrEmpty(p)));
}
