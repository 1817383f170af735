using System.Collections.Immutable;
using System.Globalization;
using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>What facts make of a machine: a contract says how it is, a verb and <c>leaves</c> change it.</summary>
internal static class Changes
{
    private const string None = "none";
    private const int Deepest = 8;

    /// <summary>What a contract says. A hook that no contract names is empty: a load that comes along hung has to be said.</summary>
    public static MachineState Contract(this MachineState state, ImmutableArray<Fact> facts, FactWord word, Things things) =>
        facts.Where(f => f.Word == word).SelectMany(f => f.Conditions).Aggregate(state, (s, c) => s.Agreed(c, things, 0));

    public static MachineState EmptyHook(this MachineState state) => state.With(Things.Hook, None);

    public static MachineState After(this MachineState state, ImmutableArray<Fact> facts, Things things) =>
        facts.Aggregate(state, (s, fact) => s.After(fact, things));

    private static MachineState Agreed(this MachineState state, Condition condition, Things things, int depth) =>
        condition.All.Aggregate(state, (s, clause) => clause switch
        {
            StateClause { Negated: false } said => s.Said(said, things),
            BundleClause bundle when depth < Deepest => (things.Machine?.Conditions.Find(bundle.Name.Value)?.All ?? [])
                .Aggregate(s, (inner, c) => inner.Agreed(c.Value, things, depth + 1)),
            DevicesClause { Every: true } every => Kinds(every, things).Aggregate(s, (inner, kind) => inner.Put(things.Tags(kind, kind.Id.Value), every.Value.Value)),
            _ => s,
        });

    /// <summary>Devices of the machine, all or those that block something.</summary>
    public static IEnumerable<DeviceKind> Kinds(DevicesClause clause, Things things) =>
        (things.Machine?.Devices ?? Items<DeviceKind>.None).Concat(things.Root.Procedure.Devices)
            .Where(k => clause.ThatBlock is not { } block || k.Blocks.Any(b => b.Value == block.Value));

    private static MachineState Said(this MachineState state, StateClause clause, Things things)
    {
        string[] values = [.. clause.Values.Select(v => Things.Value(things.Name(v.Value)))];
        var cells = things.Device(clause.Thing.Value) is { } kind ? things.Tags(kind, clause.Thing.Value) : things.Cells(clause.Thing, clause.AtPlace);
        return cells.Aggregate(state, (s, cell) => s.Whole(cell, values));
    }

    private static MachineState After(this MachineState state, Fact fact, Things things) => (fact.Word, fact.Value) switch
    {
        (FactWord.Leaves, LeftState left) => left.States.Aggregate(state, (s, clause) => s.Left(clause, things)),
        (FactWord.Lift, NameList { Names: [var load, ..] }) => state.With(Things.Hook, things.Name(load.Value)),
        (FactWord.Land, _) => state.EmptyHook(),
        (FactWord.Drain or FactWord.Fill, NameList names) => names.Names.Aggregate(state, (s, n) => s.With(things.Name(n.Value), ImpliedValues.Of(fact.Word)!)),
        (_, Amounts amounts) when ImpliedValues.Of(fact.Word) is { } value => amounts.All.Aggregate(state, (s, amount) => s.Handled(amount, fact.Word, value, things)),
        _ => state,
    };

    private static MachineState Left(this MachineState state, StateClause clause, Things things)
    {
        var written = things.Name(clause.Values[0].Value).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return clause.Values.Length == 1 && written is [var more, "more", var value] && int.TryParse(more, CultureInfo.InvariantCulture, out var count)
            ? things.Cells(clause.Thing, clause.AtPlace).Aggregate(state, (s, cell) => s.Some(cell, count, things.Count(clause.Thing.Value), value))
            : state.Said(clause, things);
    }

    private static MachineState Handled(this MachineState state, Amount amount, FactWord verb, string value, Things things)
    {
        if (things.Device(amount.Thing.Value) is { } kind)
            return state.Moved(amount, kind, value, things).Turned(amount, kind, verb, things);
        var made = things.Root.Stack(things.Name(amount.Thing.Value)) is null ? value : verb == FactWord.Remove ? "out" : "complete";
        var cells = things.Cells(amount.Thing, amount.AtPlace);
        return amount.Count is { } count
            ? cells.Aggregate(state, (s, cell) => s.Some(cell, count.Value, amount.OutOf?.Value ?? things.Count(amount.Thing.Value), made))
            : cells.Aggregate(state, (s, cell) => s.Whole(cell, made));
    }

    /// <summary>A number of one kind are those that are not there yet, in the order declared.</summary>
    private static MachineState Moved(this MachineState state, Amount amount, DeviceKind kind, string value, Things things)
    {
        var tags = things.Tags(kind, amount.Thing.Value);
        return state.Put(amount.Count is { } count ? tags.Where(t => state.Of(t) is not [var at] || at != value).Take(count.Value) : tags, value);
    }

    /// <summary>A blank that goes in makes its line blanked, and open again when it comes out.</summary>
    private static MachineState Turned(this MachineState state, Amount amount, DeviceKind kind, FactWord verb, Things things) =>
        kind.Turns is { } turn && turn.After(verb) is { } value
            ? things.Cells(turn.State, amount.AtPlace).Aggregate(state, (s, cell) => s.Whole(cell, value.Value))
            : state;

    private static MachineState Put(this MachineState state, IEnumerable<string> tags, string value) => tags.Aggregate(state, (s, tag) => s.With(tag, value));

    /// <summary>All of it; how many were done before counts no more.</summary>
    private static MachineState Whole(this MachineState state, string cell, params ReadOnlySpan<string> values) =>
        new MachineState(state.Known.RemoveRange(state.Known.Keys.Where(k => k.StartsWith($"{cell}, ", StringComparison.Ordinal)))).With(cell, values);

    /// <summary>Some of it, beside those of which the same was done before.</summary>
    private static MachineState Some(this MachineState state, string cell, int more, int? all, string value)
    {
        var counted = $"{cell}, {value}";
        var done = more + (state.Of(counted) is [var before] ? int.Parse(before, CultureInfo.InvariantCulture) : 0);
        // what else was done to some of them still counts: ten fitted and snug, then two
        return done >= all
            ? new MachineState(state.Known.Remove(counted)).With(cell, value)
            : state.With(counted, done.ToString(CultureInfo.InvariantCulture)).With(cell, string.Create(CultureInfo.InvariantCulture, $"{done} of {all} {value}"));
    }
}
