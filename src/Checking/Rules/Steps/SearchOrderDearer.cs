using System.Collections.Immutable;
using Witnessmark.Engineering.Searching;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>Places are looked at in an order that takes longer than another would.</summary>
public sealed class SearchOrderDearer : IProcedureRule
{
    public static RuleInfo Info { get; } = new("search-order-dearer", "Steps", Severity.Query);

    /// <summary>Less is lost in the next call over the radio.</summary>
    private const decimal WorthSaying = 1;

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var search in SearchedPlaces.In(scope))
        {
            // chances of other places, or too many of them: said by odds-disagree
            if (Written(search) is not { IsDefaultOrEmpty: false } order)
                continue;
            var best = SearchOrder.Cheapest(order);
            var (takes, least) = (SearchOrder.Expected(order), SearchOrder.Expected(best));
            // as good as any, or nearly
            if (takes.Value - least.Value < WorthSaying)
                continue;
            findings.Add(new Finding(
                Info,
                search.Loop!.Text.At,
                $"In this order the search takes {Minutes(takes.Value)} on average; {string.Join(", ", best.Select(p => p.Name))} takes {Minutes(least.Value)}.",
                "What is likely and quick to look at comes first; by habit from front to back the machine stands open longer for nothing.",
                $"Write `for-each: {((Loop)search.Loop.Value).Kind.Value} in {string.Join(", ", best.Select(p => p.Name))}`, unless something else decides the order: then say what, in the text.")
            {
                Worked = [takes.Line, least.Line],
                Further = [new FurtherPlace(search.Odds.Text.At, "chance and minutes of each")],
            });
        }
    }

    /// <summary>The places with their numbers, in the order of the loop.</summary>
    private static ImmutableArray<SearchPlace>? Written(SearchedPlaces search)
    {
        var odds = search.All.DistinctBy(o => o.Name.Value).ToDictionary(o => o.Name.Value, StringComparer.Ordinal);
        var minutes = UnitTable.Get("min");
        return search.Turns.Length is 0 or > SearchOrder.MostPlaces || search.Turns.Length != odds.Count || !search.Turns.All(odds.ContainsKey) || odds.Values.Sum(o => o.Chance.Number) > 100 || odds.Values.Any(o => o.Minutes.Number <= 0)
            ? null
            : [.. search.Turns.Select(t => new SearchPlace(t, odds[t].Chance.Number / 100, odds[t].Minutes.In(minutes).Number))];
    }

    private static string Minutes(decimal minutes) => $"{Say.Number(decimal.Round(minutes))} min";
}
