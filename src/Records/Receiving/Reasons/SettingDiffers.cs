using Witnessmark.Language.Findings;
using Witnessmark.Language.Quantities;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>The wrench was dialled to something else than what is printed.</summary>
public sealed class SettingDiffers : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("setting-differs");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<SettingAsk>())
        {
            if (Typed.Text(answer.Value) is not { } text)
                continue;
            if (QuantityReader.Quantity(text.Value) is { Ok: true, Value: var dialled } && dialled.Unit.SameKindAs(answer.Ask.Dial.Unit) && dialled.CompareTo(answer.Ask.Dial) == 0)
                continue;
            findings.Add(new Finding(
                Info,
                text.At,
                $"The wrench was dialled to {text.Value} in {answer.Entry.Says}; printed is {answer.Ask.Dial}.",
                "Behind an adapter the bolt gets another torque than the dial shows. The printed setting takes that into account; a remembered one does not.",
                $"Dial {answer.Ask.Dial} and tighten again from loose.")
            {
                Worked = [answer.Ask.Worked],
            });
        }
    }
}
