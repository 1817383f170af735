using System.Globalization;
using Scriban.Runtime;
using Witnessmark.Records.Sheets;
using Witnessmark.Records.Tags;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Checklist.Asks;

namespace Witnessmark.Rendering.Fender;

/// <summary>Every number of a sheet that hands wait for, with the step it belongs to.</summary>
internal static class CardNumbers
{
    public static IEnumerable<ScriptObject> Torques(SheetContext context) =>
        Each<PassAsk>(context, (step, ask) => At(step, PassBlock.Of(ask, step, context)));

    /// <summary>One line for a thing that is counted to the same number at several steps.</summary>
    public static IEnumerable<ScriptObject> Counts(SheetContext context) =>
        context.Plan.Steps.SelectMany(s => s.Asks.OfType<CountAsk>().Where(c => !c.AtLeast || c.Expected > 0).Select(c => (s.Code, Ask: c)))
            .GroupBy(c => (c.Ask.Key, c.Ask.Expected, c.Ask.AtLeast))
            .Select(g => new ScriptObject
            {
                ["what"] = context.Tongue.Name(g.Key.Key),
                ["number"] = string.Create(CultureInfo.InvariantCulture, $"{g.Key.Expected}"),
                ["more"] = g.Key.AtLeast ? context.Words.OrMore : "",
                ["steps"] = $"{context.Words.AtStepNumber} {string.Join(", ", g.Select(c => c.Code.Plain))}",
            });

    /// <summary>Limits of readings and values, and whatever else a step stops for.</summary>
    public static IEnumerable<ScriptObject> Limits(SheetContext context) =>
        context.Plan.Steps.SelectMany(s => Limits(s, context).Concat(Bands(s, context)).Concat(StepLines.StopIfs(s, context).Select(stop => new ScriptObject { ["stop"] = stop })).Select(l => At(s, l)));

    /// <summary>Devices that go in and come out together stand in one line.</summary>
    public static IEnumerable<ScriptObject> Devices(SheetContext context) =>
        TagPlanner.Plan(context.Plan).Devices
            .GroupBy(d => (d.Kind.Id.Value, d.In, d.Out))
            .Select(g => new ScriptObject
            {
                ["tags"] = string.Join(' ', g.Select(d => d.Tag)),
                ["kind"] = context.Tongue.Name(g.Key.Value),
                ["comes_out"] = g.Key.Out is { } step ? $"{context.Words.ComesOut} {context.Words.AtStepNumber} {step.Plain}" : context.Words.StaysIn,
            });

    private static IEnumerable<ScriptObject> Limits(SheetStep step, SheetContext context) =>
        from ask in step.Asks
        let limits = Limits(ask, context)
        where limits is not null
        select new ScriptObject { ["name"] = context.Tongue.Name(ask.Key), ["limits"] = limits, ["bands"] = new ScriptArray(), ["stop"] = "" };

    private static IEnumerable<ScriptObject> Bands(SheetStep step, SheetContext context) =>
        from ask in step.Asks.OfType<ReadingAsk>()
        let bands = BandWords.Of(ask, context)
        where bands.Count > 0
        select new ScriptObject { ["name"] = context.Tongue.Name(ask.Key), ["bands"] = bands, ["stop"] = "" };

    private static ScriptObject? Limits(Ask ask, SheetContext context) => ask switch
    {
        ReadingAsk { Accept: { } accept } reading => context.Quantities.Of(
            accept, reading.Points * reading.Pieces.Length > 1 ? context.Words.Judge(reading.Reading.Judge?.Value) : "", reading.Reading.JudgesDifference),
        WorkedAsk { Accept: { } accept } => context.Quantities.Of(accept),
        _ => null,
    };

    private static IEnumerable<ScriptObject> Each<T>(SheetContext context, Func<SheetStep, T, ScriptObject> show)
        where T : Ask => context.Plan.Steps.SelectMany(s => s.Asks.OfType<T>().Select(a => show(s, a)));

    private static ScriptObject At(SheetStep step, ScriptObject model)
    {
        model["code"] = step.Code.Plain;
        return model;
    }
}
