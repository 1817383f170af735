using System.Collections.Immutable;
using Witnessmark.Checking.Rules.Readings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Rules.Tools;

/// <summary>A reading taken with a gauge: the one that the step names, or else the one that the reading names.</summary>
/// <param name="At">Where the gauge is named.</param>
internal sealed record GaugeUse(StepInPlace Step, ReadingItem Reading, Gauge Gauge, Location At)
{
    private static readonly Once<Scope, ImmutableArray<GaugeUse>> InScope = new(s => [.. All(s)]);

    public static ImmutableArray<GaugeUse> In(Scope scope) => InScope.Of(scope);

    private static IEnumerable<GaugeUse> All(Scope scope)
    {
        foreach (var place in scope.Procedure.Walk())
            if (place.Step.Value<NameList>(FactWord.Measure) is { } measured)
                foreach (var reading in Readings(scope, measured))
                    if (Find(scope, place, reading) is { } use)
                        yield return use;
    }

    /// <summary>Readings with numbers that a step takes.</summary>
    public static IEnumerable<ReadingItem> Measured(Scope scope, StepInPlace place) =>
        place.Step.Value<NameList>(FactWord.Measure) is { } measured ? Readings(scope, measured) : [];

    private static IEnumerable<ReadingItem> Readings(Scope scope, NameList measured) =>
        measured.Names.Select(n => scope.Reading(n.Value)).OfType<ReadingItem>().Where(r => !r.IsLook);

    /// <summary>The gauges that a step names.</summary>
    public static IEnumerable<(Gauge Gauge, Location At)> Named(Scope scope, StepInPlace place)
    {
        foreach (var name in place.Step.Value<NameList>(FactWord.Tool)?.Names ?? [])
            if (scope.Tool(name.Value) is Gauge gauge)
                yield return (gauge, name.At);
    }

    private static GaugeUse? Find(Scope scope, StepInPlace place, ReadingItem reading)
    {
        var named = Named(scope, place).ToList();
        if (named.Count > 0)
        {
            // a step that takes several readings names several gauges: the reading's own first, then one that measures its kind
            var (gauge, at) = named.OrderBy(n => n.Gauge.Id.Value == reading.Gauge?.Value ? 0 : n.Gauge.Kind() == reading.Kind() ? 1 : 2).First();
            return new GaugeUse(place, reading, gauge, at);
        }
        return reading.Gauge is { } own && scope.Tool(own.Value) is Gauge usual ? new GaugeUse(place, reading, usual, own.At) : null;
    }
}

internal static class GaugeNumbers
{
    /// <summary>What the gauge's numbers measure; null for a gauge without numbers.</summary>
    public static string? Kind(this Gauge gauge) => (gauge.Range?.Value.Unit ?? gauge.Resolution?.Value.Unit)?.Kind;
}
