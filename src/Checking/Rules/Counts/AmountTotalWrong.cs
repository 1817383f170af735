using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Counts;

/// <summary>"10 of 11", and the group has 12.</summary>
public sealed class AmountTotalWrong : IProcedureRule
{
    public static RuleInfo Info { get; } = new("amount-total-wrong", "Counts", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var (place, _, amount) in scope.Procedure.Amounts())
        {
            // no total written, or nothing to hold it against
            if (amount.OutOf is not { } total || scope.CountOf(amount) is not { } sheet)
                continue;
            // the same total
            if (total.Value == sheet.Number)
                continue;
            findings.Add(
                Info,
                total.At,
                $"{Say.Step(place)} says {amount.Count?.Value} of {total.Value}; {amount.Thing.Value} has {sheet.Number} in the data sheet.",
                "The total tells the hand when it has all of them. Counted to the wrong total, one bolt stays on the bench and nobody misses it.",
                $"Write `{amount.Thing.Value} {amount.Count?.Value} of {sheet.Number}`. If the machine has {total.Value}, correct the data sheet.",
                new FurtherPlace(sheet.At, $"the data sheet has {sheet.Number}"));
        }
    }
}
