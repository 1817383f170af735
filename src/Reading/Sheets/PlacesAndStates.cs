using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

/// <summary>Where things are and what can be true of them.</summary>
internal static class PlacesAndStates
{
    private static readonly Shape PlacesShape = new("places", "a place")
    {
        Other = Row.List("wheel-end", "[CL, CR]", "the places of this kind", Row.AName),
        OtherKeys = Row.AName,
    };

    private static readonly Shape ZoneShape = new(
        "zone",
        "a zone",
        Row.Text("text", "below a hung load and 2 m around it", "where it is"),
        Row.Basis);

    private static readonly Shape StateShape = new(
        "state",
        "a state",
        Row.List("values", "[engaged, retracted]", "what it can be; the first is normal", Row.AName).Must,
        Row.List("at", "[wheel-end]", "the kind of place that has such a state each"),
        Row.Count("count", "6", "how many there are, each with a state of its own"),
        Row.Name("proved-by", "accumulator-pressure", "the reading that proves it"),
        ConditionFields.LostWhenRow,
        Row.Basis);

    private static readonly Shape ConditionShape = new(
        "condition-bundle",
        "a bundle of conditions",
        Row.List("all", "[engine = stopped, start-lock = placed]", "conditions that hold together", ConditionFields.Form),
        Row.Basis);

    public static readonly Row Places = Row.Below("places", PlacesShape, "{wheel-end: [CL, CR]}", "places by their kind");

    public static readonly Row Zones = Row.Each("zones", ZoneShape, "below a hung load and 2 m around it", "where people may be hurt", shortFor: "text");

    public static readonly Row States = Row.Each("states", StateShape, "[stopped, running]", "what can be so or otherwise", shortFor: "values");

    public static readonly Row Conditions = Row.Each("conditions", ConditionShape, "[engine = stopped, start-lock = placed]", "conditions under one name", shortFor: "all");

    /// <summary><c>wheel-end: [FL, FR, CL]</c></summary>
    public static ImmutableArray<PlaceKind> ReadPlaces(Fields sheet) => sheet.Below(Places.Key) is { } places
        ? [.. places.Map.Entries.Where(e => Names.Usable(e.Key, sheet.Findings)).Select(e => new PlaceKind(e.Key, places.List(e.Key.Value)))]
        : [];

    public static Items<Zone> ReadZones(Fields sheet) => new(sheet.Each(Zones.Key, (id, zone) => new Zone(id, zone.Map, zone.Text("text")?.Value ?? "")));

    public static Items<StateItem> ReadStates(Fields sheet) => new(sheet.Each(States.Key, State));

    public static Items<NamedCondition> ReadConditions(Fields sheet) =>
        new(sheet.Each(Conditions.Key, (id, all) => new NamedCondition(id, all.Map, all.Conditions("all"))));

    private static StateItem State(Located<string> id, Fields state)
    {
        var (when, after) = state.LostWhen();
        return new StateItem(id, state.Map)
        {
            Values = state.List("values"),
            AtEach = state.List("at"),
            Count = state.Count("count"),
            ProvedBy = state.Text("proved-by"),
            LostWhen = when,
            LostAfter = after,
        };
    }
}
