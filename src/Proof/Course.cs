using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>The course of a part: what is known of the machine after each of its steps, on every way through it.</summary>
internal static class Course
{
    // every turn of a loop can only make known values more; a machine that is not settled by then is not known
    private const int MostTurns = 32;

    public static ImmutableArray<(StepInPlace Place, MachineState After)> Of(Scope scope, ProcedurePart part)
    {
        var things = Things.Of(scope);
        var places = part.Walk(scope.Procedure).ToImmutableArray();
        var begin = MachineState.Unknown.EmptyHook().Contract(part.Facts, FactWord.StartsWith, things);
        var back = Back(places);
        var entered = new MachineState?[places.Length];
        for (var turn = 0; turn < MostTurns; turn++)
        {
            var after = Through(places, begin, entered, things);
            var settled = true;
            foreach (var (from, to) in back)
            {
                var met = entered[to] is { } before ? before.Or(after[from]) : after[from];
                settled &= met.Equals(entered[to]);
                entered[to] = met;
            }
            if (settled)
                return [.. places.Zip(after)];
        }
        return [.. places.Select(p => (p, MachineState.Unknown))];
    }

    private static MachineState[] Through(ImmutableArray<StepInPlace> places, MachineState begin, MachineState?[] entered, Things things)
    {
        var after = new MachineState[places.Length];
        var state = begin;
        for (var i = 0; i < places.Length; i++)
        {
            state = entered[i] is { } again ? state.Or(again) : state;
            after[i] = state = Done(state, places[i], things, [things.Root.Procedure]);
        }
        return after;
    }

    /// <summary>Steps from which work goes back, and where to.</summary>
    private static ImmutableArray<(int From, int To)> Back(ImmutableArray<StepInPlace> places)
    {
        var back = ImmutableArray.CreateBuilder<(int From, int To)>();
        for (var from = 0; from < places.Length; from++)
            if (places[from].Step.Find(FactWord.AgainFrom)?.Value is AgainFrom again)
                for (var to = 0; to <= from; to++)
                    if (places[to].Step.Slug == again.Step.Value)
                        back.Add((from, to));
        return back.ToImmutable();
    }

    /// <param name="within">Procedures being performed: one that performs itself is a fault elsewhere and ends here.</param>
    private static MachineState Done(MachineState before, StepInPlace place, Things things, ImmutableHashSet<Procedure> within)
    {
        var after = Enumerable.Range(0, place.Step.Facts.Turns()).Aggregate(before, (state, _) => state.After(place.Step.Facts, things));
        foreach (var perform in place.Step.All(FactWord.Perform).Select(f => f.Value).OfType<PerformValue>())
            if (things.Into(perform) is { } there)
                after = Performed(after, perform, there, within);
        return place.Effective(FactWord.OnlyIf) is null ? after : before.Or(after);
    }

    private static MachineState Performed(MachineState before, PerformValue perform, Things there, ImmutableHashSet<Procedure> within)
    {
        var callee = there.Own.Procedure;
        var parts = perform.Part is { } name ? callee.Parts.Where(p => p.Name?.Value == name.Value).ToList() : [.. callee.Parts];
        var after = before;
        foreach (var part in parts)
        {
            if (!within.Contains(callee))
                after = part.Walk(callee).Aggregate(after, (state, place) => Done(state, place, there, within.Add(callee)));
            after = after.Contract(part.Facts, FactWord.EndsWith, there);
        }
        return after;
    }
}
