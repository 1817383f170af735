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
/// Points at which people may leave the machine: after a step, when no rule that says <c>never: safe stop, …</c> can be broken on any way
/// that leads there, and none is left open.
/// </summary>
public static class SafeStops
{
    /// <summary>Whether the machine says at all when it may be left.</summary>
    public static bool AreKnownOf(Machine machine) => RulesOf(machine).Any();

    /// <summary>A point for each step of the part, in order; none when the machine does not say when it may be left.</summary>
    public static ImmutableArray<StopPoint> Of(Scope scope, ProcedurePart part) =>
        scope.Machine is { } machine && AreKnownOf(machine) ? Proofs.Of(scope).First(d => ReferenceEquals(d.Part, part)).Points : [];

    /// <summary>What the machine forbids at a stop.</summary>
    public static IEnumerable<Interlock> RulesOf(Machine machine) => Guarding.Of(machine).AtStops;
}
