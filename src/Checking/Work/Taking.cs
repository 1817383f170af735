using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Work;

/// <summary>Where readings, looks, values and tests are taken.</summary>
internal static class Taking
{
    /// <summary>The number of the first step that takes a name; a test takes its readings along.</summary>
    private static readonly Once<Scope, Dictionary<string, int>> FirstTaken = new(FindFirst);

    /// <summary>Procedures and jobs by what they perform.</summary>
    private static readonly Once<Library, ILookup<string, Procedure>> ByCallee = new(library => library.Procedures
        .SelectMany(p => p.Uses.Select(u => u.Procedure.Value).Distinct(StringComparer.Ordinal), (caller, callee) => (caller, callee))
        .ToLookup(p => p.callee, p => p.caller, StringComparer.Ordinal));

    /// <summary>What a fact takes, by name.</summary>
    public static ImmutableArray<Located<string>> Taken(this Fact fact) =>
        fact is { Word: FactWord.Measure or FactWord.Inspect or FactWord.Test or FactWord.WorkOut, Value: NameList names } ? names.Names : [];

    /// <summary>Whether it is taken by a step or before it, also by what is performed there.</summary>
    public static bool IsTakenUpTo(this Scope scope, Step step, string name) =>
        FirstTaken.Of(scope).TryGetValue(name, out var number) && number <= step.Number;

    /// <summary>Whether the contract of a part brings it along, or whoever performs the procedure has it taken.</summary>
    public static bool Brought(this Scope scope, string name) =>
        Conditions.At(scope.Procedure, FactWord.StartsWith).Any(c => c.Thing.Value == name)
        || scope.Callers().SelectMany(c => c.Uses.Select(u => scope.Library.Procedure(u.Procedure.Value)).OfType<Procedure>().Append(c))
            .Any(p => p.Id.Value != scope.Procedure.Id.Value && p.StepFacts().Any(f => f.Fact.Taken().Any(t => t.Value == name)));

    /// <summary>Procedures and jobs that perform this one.</summary>
    public static IEnumerable<Procedure> Callers(this Scope scope) => ByCallee.Of(scope.Library)[scope.Procedure.Id.Value];

    /// <summary>The verb by which a name is taken: measure, inspect, work-out, test; null when it is nothing to be taken.</summary>
    public static FactWord? TakenBy(this Scope scope, string name)
    {
        if (scope.Reading(name) is { } reading)
            return reading.IsLook ? FactWord.Inspect : FactWord.Measure;
        if (scope.Value(name) is not null)
            return FactWord.WorkOut;
        return scope.Test(name) is null ? null : FactWord.Test;
    }

    private static Dictionary<string, int> FindFirst(Scope scope)
    {
        var first = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (place, fact) in scope.Procedure.StepFacts())
            foreach (var name in TakenBy(scope, fact))
            {
                first.TryAdd(name.Value, place.Step.Number);
                foreach (var reading in scope.Test(name.Value)?.Readings ?? [])
                    first.TryAdd(reading.Value, place.Step.Number);
            }
        return first;
    }

    private static ImmutableArray<Located<string>> TakenBy(Scope scope, Fact fact) =>
        fact.Value is PerformValue perform && scope.Library.Procedure(perform.Procedure.Value) is { } callee
            ? [.. callee.StepFacts().SelectMany(f => f.Fact.Taken())]
            : fact.Taken();
}
