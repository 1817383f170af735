using System.Collections.Immutable;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>A group brought to its torque with a wrench, by a step of its own or through a common part.</summary>
/// <param name="At">Where the wrench is chosen, for messages.</param>
/// <param name="Adapter">A crow-foot or extension, or null.</param>
public sealed record TighteningJob(StepInPlace Step, FastenerGroup Group, Wrench? Wrench, Wrench? Adapter, Location At, string? AtPlace);

public static class TighteningJobs
{
    private static readonly Once<Scope, ImmutableArray<TighteningJob>> InScope = new(s => [.. Find(s)]);

    /// <summary>Every tightening whose group is known, in order.</summary>
    public static ImmutableArray<TighteningJob> Tightenings(this Scope scope) => InScope.Of(scope);

    /// <summary>
    /// The one torque wrench of the tool lists that reaches a group's torque within the house's share of its scale: a step that names no tool means it.
    /// Null when none does, or several do; then somebody has to choose.
    /// </summary>
    public static Wrench? OnlyWrenchFor(this Scope scope, FastenerGroup group)
    {
        if (group.Torque?.Value.Target is not { Unit.Kind: "torque" } torque)
            return null;
        var share = scope.Library.Workshop.Limits.WrenchShare;
        var reaching = scope.ToolLists.SelectMany(t => t.Wrenches).Where(w => w.IsTorqueWrench && Reaches(w, torque, share)).Take(2).ToList();
        return reaching is [var only] ? only : null;
    }

    private static bool Reaches(Wrench wrench, Quantity torque, (decimal Low, decimal High) share) =>
        wrench.Range?.Value is { Low: not null, High: { Value: var most } } range && most.Unit.Kind == "torque" && range.Contains(torque)
        && torque.CompareTo(most with { Number = most.Number * share.Low }) >= 0 && torque.CompareTo(most with { Number = most.Number * share.High }) <= 0;

    private static IEnumerable<TighteningJob> Find(Scope scope)
    {
        foreach (var (place, fact) in scope.Procedure.StepFacts())
        {
            if (fact is { Word: FactWord.Tighten, Value: Amounts amounts })
                foreach (var job in Own(scope, place, amounts))
                    yield return job;
            if (fact.Value is PerformValue perform && Through(scope, place, perform, fact.Text.At) is { } performed)
                yield return performed;
        }
    }

    private static IEnumerable<TighteningJob> Own(Scope scope, StepInPlace place, Amounts amounts)
    {
        var tool = place.Step.Value<NameList>(FactWord.Tool)?.Names;
        var wrenches = (tool ?? []).Select(t => (At: t.At, Wrench: scope.Wrench(t.Value))).Where(t => t.Wrench is not null).ToList();
        foreach (var amount in amounts.All)
            if (scope.Fasteners(amount.Thing.Value) is { } group)
            {
                var wrench = wrenches.FirstOrDefault(w => !w.Wrench!.IsAdapter);
                var adapter = wrenches.FirstOrDefault(w => w.Wrench!.IsAdapter);
                var chosen = wrench.Wrench ?? (tool is null ? scope.OnlyWrenchFor(group) : null);
                yield return new TighteningJob(place, group, chosen, adapter.Wrench, wrench.Wrench is null ? amount.Thing.At : wrench.At, amount.AtPlace?.Value);
            }
    }

    /// <summary>A performed common part tightens when it takes fasteners.</summary>
    private static TighteningJob? Through(Scope scope, StepInPlace place, PerformValue perform, Location at)
    {
        if (scope.Library.Procedure(perform.Procedure.Value) is not { } callee)
            return null;
        var given = perform.Arguments.Select(a => (Argument: a, Kind: callee.Takes.FirstOrDefault(t => t.Name.Value == a.Name.Value)?.Kind.Value)).ToList();
        var groupGiven = given.FirstOrDefault(g => g.Kind == "fasteners").Argument;
        if (groupGiven is null || scope.Fasteners(groupGiven.Value.Value) is not { } group)
            return null;
        var wrench = given.FirstOrDefault(g => g.Kind == "torque wrench").Argument;
        var adapter = given.FirstOrDefault(g => g.Kind == "adapter").Argument;
        return new TighteningJob(
            place,
            group,
            wrench is null ? null : scope.Wrench(wrench.Value.Value),
            adapter is null ? null : scope.Wrench(adapter.Value.Value),
            wrench?.Value.At ?? at,
            groupGiven.AtPlace?.Value);
    }
}
