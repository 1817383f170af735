using Witnessmark.Language.Findings;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>A value beyond its limits: as worked out again where it can be, else as written.</summary>
public sealed class WorkedValueOutside : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("worked-value-outside");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<WorkedAsk>())
        {
            var again = Recomputed.Of(held, answer.Ask);
            if (answer.Ask.Accept is not { } accept || (again?.Worked.Value ?? Written(answer)) is not { } value)
                continue;
            if (!value.Unit.SameKindAs(accept.Unit) || accept.Contains(value))
                continue;
            findings.Add(new Finding(
                Info,
                answer.Value.At,
                Say.Capital($"{DeclaredName.Spoken(answer.Ask.Key)} is {value}; the limit is {accept}."),
                $"The sheet says stop here: {answer.Entry.Says}.",
                Say.Capital(answer.Ask.Value.Outside?.Value ?? "Find the part that makes it so, before anything is closed."))
            {
                Worked = again is null ? [] : [again.Worked.Line],
            });
        }
    }

    private static Quantity? Written(Answer<WorkedAsk> answer) =>
        Typed.Text(answer.Value) is { } text && QuantityReader.Quantity(text.Value) is { Ok: true } read ? read.Value : null;
}
