using Witnessmark.Language.Model;

namespace Witnessmark.Records.Sheets;

/// <summary>Which instrument or wrench was used: asked wherever a step names one or its reading does.</summary>
internal static class ToolAsks
{
    public static IEnumerable<Ask> Of(StepInPlace place, StepNames names)
    {
        var named = place.Step.Value<NameList>(FactWord.Tool)?.Names.Select(n => names.Filled(n.Value)).ToList() ?? [.. Gauges(place, names).Concat(Wrenches(place, names)).Distinct(StringComparer.Ordinal)];
        if (named.Count > 0)
            yield return new ToolAsk(EntryKeys.Tool, [.. named]);
    }

    /// <summary>Of what is measured, by itself or in a test.</summary>
    private static List<string> Gauges(StepInPlace place, StepNames names)
    {
        var tested = Named(place, FactWord.Test).SelectMany(t => names.Test(t)?.Readings ?? []).Select(r => r.Value);
        return [.. Named(place, FactWord.Measure).Concat(tested).Select(r => names.Reading(r)?.Gauge?.Value).OfType<string>().Distinct(StringComparer.Ordinal)];
    }

    private static IEnumerable<string> Wrenches(StepInPlace place, StepNames names) =>
        (place.Step.Value<Amounts>(FactWord.Tighten)?.All ?? []).Select(a => names.Fasteners(a.Thing.Value)).OfType<FastenerGroup>()
            .Select(g => TighteningAsks.Inferred(g, place, names)?.Id.Value).OfType<string>();

    private static IEnumerable<string> Named(StepInPlace place, FactWord word) => place.Step.Value<NameList>(word)?.Names.Select(n => n.Value) ?? [];
}
