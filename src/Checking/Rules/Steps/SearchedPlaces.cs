using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>A loop that looks for something, and what is written of its turns.</summary>
/// <param name="Turns">In the order worked.</param>
internal sealed record SearchedPlaces(Fact Odds, Fact? Loop, ImmutableArray<string> Turns, ImmutableArray<Odd> All)
{
    public static IEnumerable<SearchedPlaces> In(Scope scope) =>
        from facts in scope.Procedure.Parts.SelectMany(p => p.Sections.Select(s => s.Facts).Prepend(p.Facts))
        let odds = facts.Find(FactWord.Odds)
        where odds?.Value is OddsValue
        let loop = facts.Find(FactWord.ForEach)
        select new SearchedPlaces(odds, loop, TurnsOf(loop, scope), ((OddsValue)odds.Value).All);

    private static ImmutableArray<string> TurnsOf(Fact? fact, Scope scope) => fact?.Value is not Loop { OfGroup: null } loop
        ? []
        : loop.In.IsEmpty
            ? [.. scope.Machine?.Places.FirstOrDefault(p => p.Name.Value == loop.Kind.Value)?.Names.Select(n => n.Value) ?? []]
            : [.. loop.In.Select(n => n.Value)];
}
