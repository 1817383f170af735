using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>Nobody has released the machine yet.</summary>
public sealed class ReleaseMissing : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Query("release-missing");

    public static void Check(Held held, FindingList findings)
    {
        var release = held.SignOff.Release;
        var missing = new List<string>();
        if (Typed.IsEmpty(release?.By))
            missing.Add("initials");
        if (Typed.IsEmpty(release?.When))
            missing.Add("time");
        if (missing.Count == 0)
            return;
        findings.Add(
            Info,
            Head.PlaceOf(held.SignOff, "release"),
            $"The release has {Say.Some(missing.Select(m => $"no {m}"))} yet.",
            "Until somebody has looked at the whole of it and signed, the work is not finished.",
            "Whoever releases it writes initials behind by: and the time behind at:.");
    }
}
