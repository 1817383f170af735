using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>Chances and minutes that are not those of the loop they stand beside.</summary>
public sealed class OddsDisagree : IProcedureRule
{
    public static RuleInfo Info { get; } = new("odds-disagree", "Steps", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var search in SearchedPlaces.In(scope))
            if (Wrong(search) is var (found, putRight))
                findings.Add(
                    Info,
                    search.Odds.Text.At,
                    found,
                    "The order of the search is held against these numbers. With another set of places, or more than the whole, it would be held against nothing.",
                    putRight);
    }

    private static (string Found, string PutRight)? Wrong(SearchedPlaces search)
    {
        if (search.Turns.IsEmpty)
            return ("Chances and minutes stand here, and nothing is repeated.", "Add the loop that they are of, `for-each: wheel-end in CL, CR`, or take them out.");
        var named = search.All.Select(o => o.Name.Value).ToList();
        if (search.Turns.Except(named).ToList() is [_, ..] without)
            return ($"The loop goes through {Say.And(search.Turns)}; {Say.And(without)} {(without.Count == 1 ? "has" : "have")} no chance and minutes.", $"Add {Say.And(without)} to `odds`, each with its chance and minutes.");
        if (named.Except(search.Turns).ToList() is [_, ..] other)
            return ($"{Say.And(other)} {(other.Count == 1 ? "has" : "have")} a chance here; the loop goes through {Say.And(search.Turns)}.", $"Take {Say.And(other)} out, or add {(other.Count == 1 ? "it" : "them")} to `for-each`.");
        var whole = search.All.Sum(o => o.Chance.Number);
        return whole > 100 ? ($"The chances add up to {Say.Number(whole)} %.", "Together they are 100 %, or less where the fault may be in none of these places.")
            : search.All.Any(o => o.Minutes.Number <= 0) ? ("A place takes no time to look at.", "Write how many minutes it takes.")
            : null;
    }
}
