using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>Left out as not applying, when the choice made in the same sign-off says that it applies.</summary>
public sealed class NotDoneButDue : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("not-done-but-due");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var entry in held.Entries)
        {
            if (!entry.NotDone || Due.Is(held, entry.Asked) is not true)
                continue;
            var condition = (entry.Asked.Step.Guard ?? entry.Asked.Step.Under[^1]).At.Text;
            findings.Add(
                Info,
                entry.Entry.Find(EntryKeys.NotDone)!.At,
                Say.Capital($"{entry.Says} was left out, but {condition} is what this sign-off says."),
                "The choice was made so that this step is done.",
                "Do it, and write its entry; or put the choice right if that is what was typed wrong.");
        }
    }
}
