using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Counts;

/// <summary>More is handled than there is.</summary>
public sealed class AmountOver : IProcedureRule
{
    public static RuleInfo Info { get; } = new("amount-over", "Counts", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var (place, fact, amount) in scope.Procedure.Amounts())
        {
            // all of it; and a count that is off is said by count-disagrees
            if (amount.Count is not { } number || fact.Word == FactWord.Count)
                continue;
            var most = amount.OutOf?.Value ?? scope.CountOf(amount)?.Number;
            // no more than there is
            if (most is null || number.Value <= most)
                continue;
            findings.Add(
                Info,
                number.At,
                $"{Say.Step(place)} asks for {number.Value} of {amount.Thing.Value}; there are {most}.",
                "Somebody will look for the part that does not exist, or take one that belongs somewhere else.",
                $"Write the number that this step handles, {most} or fewer.");
        }
    }
}
