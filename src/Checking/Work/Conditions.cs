using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Work;

/// <summary>Where a procedure asks for something.</summary>
internal static class Conditions
{
    private static readonly Once<Procedure, ImmutableArray<Fact>> Written =
        new(p => [.. p.Parts.SelectMany(part => part.Facts.Concat(part.Sections.SelectMany(s => s.Facts.Concat(s.Steps.SelectMany(t => t.Facts)))))]);

    private static readonly Once<Procedure, HashSet<string>> AskedFor =
        new(p => p.AllFacts().SelectMany(States).Select(c => c.Thing.Value).ToHashSet(StringComparer.Ordinal));

    /// <summary>Every fact, of headings and of steps, in the order written.</summary>
    public static ImmutableArray<Fact> AllFacts(this Procedure procedure) => Written.Of(procedure);

    /// <summary>Names of all things that a condition of the procedure asks for.</summary>
    public static IReadOnlySet<string> ThingsAskedFor(this Procedure procedure) => AskedFor.Of(procedure);

    /// <summary>What the contracts of all parts say at their start or end.</summary>
    public static IEnumerable<StateClause> At(Procedure procedure, FactWord word) =>
        procedure.Parts.SelectMany(p => p.Facts).Where(f => f.Word == word).SelectMany(States);

    /// <summary>The states that a fact asks for.</summary>
    public static IEnumerable<StateClause> States(Fact fact) =>
        fact.Conditions is { IsEmpty: false } conditions ? conditions.SelectMany(c => c.All).OfType<StateClause>() : [];
}
