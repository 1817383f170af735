using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>A tool that is not on the list, or not the one that the step names.</summary>
public sealed class ToolUnlisted : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("tool-unlisted");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<ToolAsk>())
        {
            if (Typed.Text(answer.Value) is not { } written)
                continue;
            var tools = written.Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            if (tools.FirstOrDefault(t => !answer.Ask.Tools.Contains(t)) is not { } other)
                continue;
            var listed = held.Plan!.Scope.Tool(other) is not null;
            findings.Add(
                Info,
                written.At,
                listed ? $"{other} was used in {answer.Entry.Says}; the sheet names {Say.Or(answer.Ask.Tools)}." : $"{other} is on no tool list of this procedure.",
                "The range, the scale and the calibration were looked at for the tool on the list. Of another one nothing is known.",
                NearMiss.Of(other, answer.Ask.Tools) is { } near ? $"Did you mean {near}?" : $"If it really was another one, do the step again with {Say.Or(answer.Ask.Tools)}.");
        }
    }
}
