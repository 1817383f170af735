using Witnessmark.Language.Findings;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>A sound code for which the sheet has no entry.</summary>
public sealed class StepNotOnSheet : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("step-not-on-sheet");

    public static void Check(Held held, FindingList findings)
    {
        var asked = held.Asked.Select(a => a.Step.Code).ToHashSet();
        foreach (var entry in held.SignOff.Entries)
        {
            if (StepCodeWrong.Read(entry.Step.Value) is not { } code || code.Code.CheckDigit != code.Check || asked.Contains(code.Code))
                continue;
            var step = held.Plan!.Steps.FirstOrDefault(s => s.Code == code.Code);
            findings.Add(
                Info,
                entry.Step.At,
                step is null
                    ? $"This sheet has no step {code.Code.Plain}."
                    : $"Step {code.Code.Plain} ({step.Fills.In(step.Step.Name.Value)}) asks for nothing to be written.",
                "What stands here belongs to a step of another sheet, or to another step of this one.",
                "Compare it with the paper and give it the code of its own step, or take the entry out.");
        }
    }
}
