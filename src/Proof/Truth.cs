using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>Whether something holds in a state: yes, no, or not known.</summary>
internal static class Truth
{
    private const int Deepest = 8;

    /// <param name="moment">What the point is: <c>safe stop</c>, when people have left the danger zones.</param>
    public static bool? Holds(this MachineState state, Condition condition, Things things, string moment) =>
        condition.Holds(clause => state.Holds(clause, things, moment, 0));

    private static bool? Holds(this MachineState state, Clause clause, Things things, string moment, int depth) => clause switch
    {
        MomentClause m => m.Moment == moment,
        PeopleClause => false,
        StateClause s when things.Machine?.Openings.Find(s.Thing.Value) is { } opening => state.Stands(opening, s, things, moment, depth),
        StateClause s => state.Holds(s, things),
        DevicesClause d => Together([.. Changes.Kinds(d, things).SelectMany(k => things.Tags(k, k.Id.Value)).Select(t => state.Is(t, v => v == d.Value.Value))], every: d.Every),
        BundleClause b when depth < Deepest && things.Machine?.Conditions.Find(b.Name.Value) is { } bundle =>
            Together([.. bundle.All.Select(c => c.Value.Holds(inner => state.Holds(inner, things, moment, depth + 1)))], every: true),
        _ => null,
    };

    private static bool? Holds(this MachineState state, StateClause clause, Things things)
    {
        bool Wanted(string value) => clause.Values.Any(v => Things.Value(things.Name(v.Value)) == value) != clause.Negated;
        if (things.Device(clause.Thing.Value) is { } kind)
            return Alike([.. things.Tags(kind, clause.Thing.Value).Select(t => state.Is(t, Wanted))]);
        var told = things.Cells(clause.Thing, clause.AtPlace).Select(cell => state.Is(cell, Wanted)).ToList();
        if (told.Count == 1)
            return told[0];
        // a step that names no place speaks of the place that the work is at, which is one of them
        if (state.Of(things.Name(clause.Thing.Value)) is not null)
            told.Add(state.Is(things.Name(clause.Thing.Value), Wanted));
        return Together(told, every: clause.AtPlace!.Value.Value.StartsWith("every ", StringComparison.Ordinal));
    }

    /// <summary>Open while it is not sure to be shut or covered.</summary>
    private static bool? Stands(this MachineState state, Opening opening, StateClause asked, Things things, string moment, int depth)
    {
        var open = opening.OpenWhen is { } when ? when.Value.Holds(c => state.Holds(c, things, moment, depth + 1)) : null;
        if (opening.CoveredBy is { } cover && things.Device(cover.Value) is { } kind)
        {
            var covered = Together([.. things.Tags(kind, cover.Value).Select(t => state.Is(t, v => v == "placed"))], every: true);
            open = covered is true ? false : open is false ? false : covered is false ? open : null;
        }
        var wantsOpen = asked.HoldsAt("open");
        return open is { } known ? known == wantsOpen : null;
    }

    private static bool? Is(this MachineState state, string cell, Func<string, bool> wanted)
    {
        if (state.Of(cell) is not { IsEmpty: false } values)
            return null;
        var met = values.Count(wanted);
        return met == values.Count ? true : met == 0 ? false : null;
    }

    /// <summary>Pieces of one kind are spoken of as one: half of them placed is neither placed nor stored.</summary>
    private static bool? Alike(List<bool?> told) => told.All(t => t is true) ? true : told.All(t => t is false) ? false : null;

    private static bool? Together(List<bool?> told, bool every) => every
        ? told.Contains(false) ? false : told.Contains(null) ? null : true
        : told.Contains(true) ? true : told.Contains(null) ? null : false;
}
