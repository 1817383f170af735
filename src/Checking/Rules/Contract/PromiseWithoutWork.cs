using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Contract;

/// <summary>A part promises a state at its end that no step brings about.</summary>
public sealed class PromiseWithoutWork : IProcedureRule
{
    public static RuleInfo Info { get; } = new("promise-without-work", "Contract", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var part in scope.Procedure.Parts)
            foreach (var promise in Clauses(part, FactWord.EndsWith))
            {
                // what hangs on the hook: load-left-hanging looks after that
                if (promise.Thing.Value == Loads.Hook)
                    continue;
                // some step, or what it performs, brings it about
                if (IsBroughtAbout(scope, part, promise))
                    continue;
                // it was so at the start
                if (Clauses(part, FactWord.StartsWith).Any(s => IsSame(s, promise)))
                    continue;
                findings.Add(
                    Info,
                    promise.At,
                    $"{scope.Procedure.Id.Value} promises `{promise.At.Text}` at its end, and no step brings it about.",
                    "Whoever goes on from here trusts that line: the next procedure starts on it, and nobody looks again.",
                    PutRight(promise));
            }
    }

    private static string PutRight(StateClause promise)
    {
        var (thing, value) = (promise.Thing.Value, promise.Values[0].Value);
        var fact = ImpliedStates.Verbs(value) is [var verb, ..] ? $"{verb.Spelled()}: {thing}" : $"leaves: {thing} = {value}";
        return $"Add the step that does it, with `{fact}`, or take the promise out.";
    }

    private static IEnumerable<StateClause> Clauses(ProcedurePart part, FactWord word) =>
        part.Facts.Where(f => f.Word == word).SelectMany(Conditions.States)
            .Where(c => !c.Negated && !c.Values.IsEmpty);

    private static bool IsSame(StateClause start, StateClause end) =>
        start.Thing.Value == end.Thing.Value && start.AtPlace?.Value == end.AtPlace?.Value
        && start.Values.All(v => end.Values.Any(e => e.Value == v.Value));

    private static bool IsBroughtAbout(Scope scope, ProcedurePart part, StateClause promise)
    {
        var verbs = promise.Values.Select(v => ImpliedStates.Verbs(v.Value)).ToList();
        foreach (var section in part.Sections)
            foreach (var step in section.Steps)
                foreach (var fact in step.Facts)
                    if (BringsAbout(scope, fact, promise, verbs))
                        return true;
        return false;
    }

    private static bool BringsAbout(Scope scope, Fact fact, StateClause promise, List<FactWord[]?> verbs)
    {
        if (fact.Value is LeftState left)
            return left.States.Select(s => s.Thing.Value).Contains(promise.Thing.Value);
        if (fact.Value is PerformValue perform)
            return Performs(scope, perform, promise);
        if (Turns(scope, fact, promise))
            return true;
        return AreMeant(verbs, fact.Word) && fact.Handles(promise.Thing.Value, scope);
    }

    /// <summary>A device that is placed or recovered brings about the state that it turns.</summary>
    private static bool Turns(Scope scope, Fact fact, StateClause promise) =>
        fact.Value is Amounts amounts && amounts.All.Any(a => scope.Device(a.Thing.Value)?.Turns is { } turn
            && turn.State.Value == promise.Thing.Value && turn.After(fact.Word) is { } value && promise.HoldsAt(value.Value));

    private static bool AreMeant(List<FactWord[]?> verbs, FactWord word)
    {
        foreach (var verb in verbs)
            if (verb is null || verb.Contains(word))
                return true;
        return false;
    }

    /// <summary>What is performed is given the thing, promises it itself, or cannot be seen.</summary>
    private static bool Performs(Scope scope, PerformValue perform, StateClause promise) =>
        perform.Arguments.Any(a => a.Value.Value == promise.Thing.Value)
        || scope.Library.Procedure(perform.Procedure.Value) is not { } callee
        || callee.Parts.Any(p => Clauses(p, FactWord.EndsWith).Any(c => c.Thing.Value == promise.Thing.Value));
}
