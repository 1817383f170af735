using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Counts;

/// <summary>A step counts to another number than the data sheet has.</summary>
public sealed class CountDisagrees : IProcedureRule
{
    public static RuleInfo Info { get; } = new("count-disagrees", "Counts", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var (place, _, amount) in scope.Procedure.Amounts().Where(a => a.Fact.Word == FactWord.Count))
        {
            // all of them, or something that the sheet does not count
            if (amount.Count is not { } written || scope.CountOf(amount) is not { } sheet)
                continue;
            // the same number, or at least some of them
            if (written.Value == sheet.Number || (amount.AtLeast && written.Value < sheet.Number))
                continue;
            findings.Add(
                Info,
                written.At,
                $"{Say.Step(place)} counts {written.Value} of {amount.Thing.Value}; the data sheet has {sheet.Number}.",
                "A count is the last look at what nobody can see later. When its number is wrong, one part too few or too many passes it.",
                $"Write {sheet.Number}, or only `count: {amount.Thing.Value} = all`: then the number comes from the sheet. If the machine has {written.Value}, correct the sheet.",
                new FurtherPlace(sheet.At, $"the data sheet has {sheet.Number}"));
        }
    }
}
