using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Work;

/// <summary>A decision with everything that its outcomes ask for, gone through case by case.</summary>
/// <param name="Cases">Every combination of results, each as one value a thing.</param>
internal sealed record Decision(
    StepInPlace Place, Fact Decide, ImmutableArray<(Fact Fact, OutcomeValue Value)> Outcomes, ImmutableArray<ImmutableArray<(string Thing, string Value)>> Cases)
{
    /// <summary>More combinations than that nobody decides by a table.</summary>
    private const int MostCases = 4096;

    public bool HasOtherwise => Outcomes.Any(o => o.Value.Otherwise);

    /// <summary>The outcomes whose conditions hold in a case; <c>otherwise</c> is none of them.</summary>
    public IEnumerable<OutcomeValue> In(ImmutableArray<(string Thing, string Value)> results) =>
        Outcomes.Select(o => o.Value).Where(o => o.When.Any(w => w.Holds(c => c is StateClause s && s.HoldsAt(results.First(r => r.Thing == Key(s)).Value)) == true));

    /// <summary>Decisions that ask only for what has known results; of others nothing can be said.</summary>
    public static IEnumerable<Decision> All(Scope scope)
    {
        foreach (var place in scope.Procedure.Walk())
        {
            var outcomes = place.Step.All(FactWord.Outcome).Where(f => f.Value is OutcomeValue).Select(f => (f, (OutcomeValue)f.Value)).ToImmutableArray();
            if (place.Step.Find(FactWord.Decide) is { } decide && !outcomes.IsEmpty && CasesOf(scope, outcomes) is { IsEmpty: false } cases)
                yield return new Decision(place, decide, outcomes, cases);
        }
    }

    public static string Key(StateClause clause) => clause.AtPlace is { } at ? $"{clause.Thing.Value} at {at.Value}" : clause.Thing.Value;

    private static ImmutableArray<ImmutableArray<(string, string)>> CasesOf(Scope scope, ImmutableArray<(Fact, OutcomeValue Value)> outcomes)
    {
        ImmutableArray<ImmutableArray<(string, string)>> cases = [[]];
        var clauses = outcomes.SelectMany(o => o.Value.When).SelectMany(w => w.All).ToList();
        if (!clauses.TrueForAll(c => c is StateClause))
            return [];
        foreach (var thing in clauses.OfType<StateClause>().DistinctBy(Key))
        {
            var results = ResultsOf(scope, thing.Thing.Value);
            if (results.IsEmpty || cases.Length * results.Length > MostCases)
                return [];
            cases = [.. cases.SelectMany(c => results.Select(r => c.Add((Key(thing), r))))];
        }
        return cases;
    }

    private static ImmutableArray<string> ResultsOf(Scope scope, string thing)
    {
        if (scope.Reading(thing) is { } reading)
            return [.. reading.Results];
        if (scope.Value(thing) is { } value)
            return value.Accept is null && value.AcceptAsClearanceOf is null ? [] : ["inside", "outside"];
        if (scope.Test(thing) is not null)
            return ["passed", "failed"];
        return scope.Machine?.States.Find(thing) is { Count: null } state ? [.. state.Values.Select(v => v.Value)] : [];
    }
}
