using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Work;

internal static class Loads
{
    /// <summary>The state that says what hangs.</summary>
    public const string Hook = "load-on-hook";

    /// <summary>The load that a lift or land handles, as named.</summary>
    public static Located<string>? Named(Fact fact) => fact.Value switch
    {
        Landing landing => landing.Load,
        NameList { Names: [var first, ..] } => first,
        _ => null,
    };

    /// <summary>Whether one person may lift it: its mass is within the limit of the house.</summary>
    public static bool ByHand(Scope scope, Fact fact) =>
        Named(fact) is { } name && scope.Load(name.Value)?.Mass is { } mass
        && mass.Value.Unit.SameKindAs(scope.Library.Workshop.Limits.LiftByHand.Unit)
        && mass.Value.CompareTo(scope.Library.Workshop.Limits.LiftByHand) <= 0;

    /// <summary>Whether the contract of a part speaks of what hangs on the hook.</summary>
    public static bool OnHook(ProcedurePart part, FactWord word) =>
        part.Facts.Where(f => f.Word == word).SelectMany(Conditions.States)
            .Any(c => c.Thing.Value == Hook && c.Values.Any(v => v.Value != "none"));

    /// <summary>Whether a step lifts or lands a load, or performs what does, or what nobody can see here.</summary>
    public static bool Handles(Scope scope, Step step, FactWord verb, string load)
    {
        foreach (var fact in step.Facts)
            if (Handles(fact, verb, load) || (fact.Value is PerformValue perform && Performs(scope, perform, verb, load)))
                return true;
        return false;
    }

    private static bool Handles(Fact fact, FactWord verb, string load) => fact.Word == verb && Named(fact)?.Value == load;

    private static bool Performs(Scope scope, PerformValue perform, FactWord verb, string load) =>
        scope.Library.Procedure(perform.Procedure.Value) is not { } callee
        || callee.StepFacts().Any(f => Handles(f.Fact, verb, load));
}
