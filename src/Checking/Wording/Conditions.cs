using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Wording;

/// <summary>Where a procedure asks for something.</summary>
internal static class Conditions
{
    /// <summary>Every fact, of headings and of steps, in the order written.</summary>
    public static IEnumerable<Fact> AllFacts(this Procedure procedure) =>
        procedure.Parts.SelectMany(p => p.Facts.Concat(p.Sections.SelectMany(s => s.Facts.Concat(s.Steps.SelectMany(t => t.Facts)))));

    /// <summary>Names of all things that a condition of the procedure asks for.</summary>
    public static IEnumerable<string> ThingsAskedFor(this Procedure procedure) =>
        procedure.AllFacts().SelectMany(In).SelectMany(c => c.All).OfType<StateClause>().Select(c => c.Thing.Value);

    /// <summary>What the contracts of all parts say at their start or end.</summary>
    public static IEnumerable<StateClause> At(Procedure procedure, FactWord word) =>
        procedure.Parts.SelectMany(p => p.Facts).Where(f => f.Word == word).SelectMany(In).SelectMany(c => c.All).OfType<StateClause>();

    public static IEnumerable<Condition> In(Fact fact) => fact.Value switch
    {
        ConditionValue value => [value.Condition],
        OutcomeValue outcome => outcome.When,
        _ => [],
    };
}
