using Witnessmark.Language.Model;

namespace Witnessmark.Records.Sheets;

/// <summary>Which instrument or wrench was used: asked wherever a step names one or its reading does.</summary>
internal static class ToolAsks
{
    public static IEnumerable<Ask> Of(StepInPlace place, StepNames names)
    {
        var named = place.Step.Value<NameList>(FactWord.Tool)?.Names.Select(n => names.Filled(n.Value)).ToList() ?? Gauges(place, names);
        if (named.Count > 0)
            yield return new ToolAsk(EntryKeys.Tool, [.. named]);
    }

    private static List<string> Gauges(StepInPlace place, StepNames names) =>
    [
        .. (place.Step.Value<NameList>(FactWord.Measure)?.Names ?? [])
            .Select(n => names.Reading(n.Value)?.Gauge?.Value).OfType<string>().Distinct(StringComparer.Ordinal),
    ];
}
