using Witnessmark.Language.Findings;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>A value is worked out again from the readings of the same sign-off.</summary>
public sealed class WorkedValueDiffers : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("worked-value-differs");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<WorkedAsk>())
        {
            if (Recomputed.Of(held, answer.Ask) is not { } again || Typed.Text(answer.Value) is not { } text)
                continue;
            if (QuantityReader.Quantity(text.Value) is not { Ok: true, Value: var typed } || !typed.Unit.SameKindAs(again.Worked.Value.Unit))
                continue;
            var off = Math.Abs(typed.In(again.Worked.Value.Unit).Number - again.Worked.Value.Number);
            if (off <= again.Allowed)
                continue;
            findings.Add(new Finding(
                Info,
                answer.Value.At,
                Say.Capital($"{DeclaredName.Spoken(answer.Ask.Key)} is written as {typed}; from the readings it is {again.Worked.Value}."),
                "Either it was worked out wrong or a reading was copied wrong. The choice that was made with it may be wrong too.",
                "Work it out again with the readings on the paper. Whoever checked it must get the same by himself.")
            {
                Worked = [again.Worked.Line],
            });
        }
    }
}
