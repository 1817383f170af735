using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>A word that is none of those on the sheet.</summary>
public sealed class VerdictUnknown : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("verdict-unknown");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<LookAsk>())
            Check(findings, answer.Value, answer.Ask.Key, [.. answer.Ask.Reading.Results]);
        foreach (var answer in held.Answers<ChoiceAsk>())
            Check(findings, answer.Value, answer.Ask.Key, [.. answer.Ask.Outcomes]);
    }

    private static void Check(FindingList findings, DataNode value, string key, List<string> words)
    {
        // a list is entry-unreadable's
        if (Typed.Text(value)?.Value is not { } written || words.Contains(written))
            return;
        findings.Add(
            Info,
            value.At,
            Say.Capital($"{DeclaredName.Spoken(key)} is {written}; the sheet has {Say.Or(words)}."),
            "What follows depends on this word; one of our own says neither.",
            NearMiss.Of(written, words) is { } near ? $"Did you mean {near}?" : "Write the word that was left standing on the paper.");
    }
}
