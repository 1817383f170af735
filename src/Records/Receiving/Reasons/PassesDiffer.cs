using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>A pass too few or too many.</summary>
public sealed class PassesDiffer : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("passes-differ");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<PassAsk>())
        {
            if (Typed.Count(answer.Value) is not { } done || answer.Ask.Settings.Length is 0 || done == answer.Ask.Settings.Length)
                continue;
            findings.Add(
                Info,
                answer.Value.At,
                Say.Capital($"{DeclaredName.Spoken(answer.Ask.Group.Id.Value)}: {Say.Count(done, "pass", "passes")} made; the sheet has {answer.Ask.Settings.Length}."),
                "Bolts pulled down in fewer passes cock the joint, and the last pass finds the bolts that settled.",
                "Look at the inked numbers on the paper. Make the passes that are missing, from the first open one on.");
        }
    }
}
