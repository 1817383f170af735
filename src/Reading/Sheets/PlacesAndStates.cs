using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Sheets;

/// <summary>Where things are and what can be true of them.</summary>
internal static class PlacesAndStates
{
    /// <summary><c>wheel-end: [FL, FR, CL]</c></summary>
    public static ImmutableArray<PlaceKind> Places(Fields sheet)
    {
        if (sheet.Below("places", "a place", "{wheel-end: [CL, CR]}") is not { } places)
            return [];
        return
        [
            .. places.Map.Entries.Where(e => Names.Usable(e.Key, sheet.Findings))
                .Select(e => new PlaceKind(e.Key, [.. places.List(e.Key.Value, "[CL, CR]").Where(n => Names.Usable(n, sheet.Findings))])),
        ];
    }

    public static Items<Zone> Zones(Fields sheet) =>
        new(sheet.Each("zones", "below a hung load and 2 m around it", (id, zone) => new Zone(id, zone.Map, zone.Text("text")?.Value ?? ""), shortFor: "text"));

    public static Items<StateItem> States(Fields sheet) =>
        new(sheet.Each("states", "[stopped, running]", (id, state) => State(id, state), shortFor: "values"));

    public static Items<NamedCondition> Conditions(Fields sheet) =>
        new(sheet.Each("conditions", "[engine = stopped, start-lock = placed]", (id, all) => new NamedCondition(id, all.Map, all.Conditions("all")), shortFor: "all"));

    private static StateItem State(Located<string> id, Fields state)
    {
        var (when, after) = state.LostWhen();
        var item = new StateItem(id, state.Map)
        {
            Values = [.. state.List("values", "[engaged, retracted]").Where(v => Names.Usable(v, state.Findings))],
            AtEach = state.List("at", "wheel-end"),
            Count = state.Count("count", "6"),
            ProvedBy = state.Name("proved-by", "accumulator-pressure"),
            LostWhen = when,
            LostAfter = after,
        };
        state.Needs("values");
        return item;
    }
}
