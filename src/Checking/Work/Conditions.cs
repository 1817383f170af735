using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Work;

/// <summary>Where a procedure asks for something.</summary>
internal static class Conditions
{
    private static readonly Once<Procedure, HashSet<string>> AskedFor =
        new(p => p.AllFacts().SelectMany(States).Select(c => c.Thing.Value).ToHashSet(StringComparer.Ordinal));

    /// <summary>Every fact, of headings and of steps, in the order written.</summary>
    public static IEnumerable<Fact> AllFacts(this Procedure procedure)
    {
        foreach (var part in procedure.Parts)
        {
            foreach (var fact in part.Facts)
                yield return fact;
            foreach (var section in part.Sections)
            {
                foreach (var fact in section.Facts)
                    yield return fact;
                foreach (var step in section.Steps)
                    foreach (var fact in step.Facts)
                        yield return fact;
            }
        }
    }

    /// <summary>Names of all things that a condition of the procedure asks for.</summary>
    public static IReadOnlySet<string> ThingsAskedFor(this Procedure procedure) => AskedFor.Of(procedure);

    /// <summary>What the contracts of all parts say at their start or end.</summary>
    public static IEnumerable<StateClause> At(Procedure procedure, FactWord word) =>
        procedure.Parts.SelectMany(p => p.Facts).Where(f => f.Word == word).SelectMany(States);

    /// <summary>The states that a fact asks for.</summary>
    public static StateClause[] States(Fact fact) =>
        fact.Conditions is { IsEmpty: false } conditions ? [.. conditions.SelectMany(c => c.All).OfType<StateClause>()] : [];
}
