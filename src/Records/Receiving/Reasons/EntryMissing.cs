using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>Steps without an entry, said once.</summary>
public sealed class EntryMissing : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Query("entry-missing");

    public static void Check(Held held, FindingList findings)
    {
        var there = held.Entries.Select(e => e.Asked).ToHashSet();
        var required = held.Required.ToList();
        var missing = required.Where(a => !there.Contains(a)).ToList();
        // an entry that has no place on the sheet is one of them under a wrong code, and said already
        var astray = held.SignOff.Entries.Count(e => held.Asked.All(a => a.Step.Code.ToString() != e.Step.Value));
        if (missing.Count <= astray)
            return;
        findings.Add(
            Info,
            Head.PlaceOf(held.SignOff, "entries"),
            missing.Count == 1
                ? $"There is no entry for {missing[0].Says}."
                : $"{missing.Count} of {required.Count} entries are missing: steps {Say.Some(missing.Select(m => m.Step.Code.Plain))}.",
            "A step without an entry counts as not done.",
            "Type them from the paper. If the paper is empty there too, the step is still to be done.");
    }
}
