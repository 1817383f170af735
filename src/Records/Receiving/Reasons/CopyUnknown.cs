using Witnessmark.Language.Findings;
using Witnessmark.Records.Issuing;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>Nobody issued a copy with that mark.</summary>
public sealed class CopyUnknown : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("copy-unknown");

    public static void Check(Held held, FindingList findings)
    {
        // no mark is head-missing's, a trial sheet copy-mark-wrong's; a workshop without a register cannot know
        if (held.SignOff.Copy is not { } mark || TrialMark.IsOne(mark.Value.Trim()) || held.Library.Register.Copies.IsEmpty || held.Copy is not null)
            return;
        findings.Add(
            Info,
            mark.At,
            $"No copy {mark.Value} stands in the register.",
            "A copy that nobody issued may be any paper: an old version, a specimen, a sheet of another site.",
            "Read the mark in the corner of the paper again. If it is right, find out where the paper came from before anybody signs for this work; perhaps the register of the clone that issued it was not merged yet.");
    }
}
