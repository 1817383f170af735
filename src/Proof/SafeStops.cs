using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>A step, and whether the machine may be left as it is then.</summary>
/// <param name="Against">Rules of the machine that are broken then.</param>
/// <param name="Unsure">Rules of which it is not known.</param>
public sealed record StopPoint(StepInPlace Place, ImmutableArray<Interlock> Against, ImmutableArray<Interlock> Unsure)
{
    public bool IsSafe => Against.IsEmpty && Unsure.IsEmpty;
}

/// <summary>
/// Points at which people may leave the machine: after a step, when no rule that says <c>never: safe stop, …</c> is broken and
/// none is left open. Derived from what steps and contracts say, along the steps in order and round every loop; work under a
/// condition counts as done and as not done. Readings and decisions are not followed, so that a point may be called unsafe that
/// is safe on the way that was taken, and not the other way round.
/// </summary>
public static class SafeStops
{
    private const string Moment = "safe stop";

    private static readonly Once<Scope, ImmutableArray<(ProcedurePart Part, ImmutableArray<StopPoint> Points)>> Derived = new(scope =>
        [.. scope.Procedure.Parts.Select(p => (p, Points(scope, p)))]);

    /// <summary>Whether the machine says at all when it may be left.</summary>
    public static bool AreKnownOf(Machine machine) => RulesOf(machine).Any();

    /// <summary>A point for each step of the part, in order; none when the machine does not say when it may be left.</summary>
    public static ImmutableArray<StopPoint> Of(Scope scope, ProcedurePart part) =>
        Derived.Of(scope).First(d => ReferenceEquals(d.Part, part)).Points;

    /// <summary>What the machine forbids at a stop.</summary>
    public static IEnumerable<Interlock> RulesOf(Machine machine) =>
        machine.Interlocks.Where(i => i.NeverWhen is { } never && never.All.Any(c => c is MomentClause { Moment: Moment }));

    private static ImmutableArray<StopPoint> Points(Scope scope, ProcedurePart part)
    {
        if (scope.Machine is not { } machine || RulesOf(machine).ToList() is not { Count: > 0 } rules)
            return [];
        var things = Things.Of(scope);
        return [.. Course.Of(scope, part).Select(point => Point(point.Place, point.After, rules, things))];
    }

    private static StopPoint Point(StepInPlace place, MachineState state, List<Interlock> rules, Things things)
    {
        var told = rules.ToLookup(r => state.Holds(r.NeverWhen!, things, Moment) switch { true => 1, null => 0, false => -1 });
        return new StopPoint(place, [.. told[1]], [.. told[0]]);
    }
}
