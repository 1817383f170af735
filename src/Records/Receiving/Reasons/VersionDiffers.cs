using Witnessmark.Language.Findings;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>The hash is right, so the version number was copied wrong, or belongs to another page.</summary>
public sealed class VersionDiffers : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("version-differs");

    public static void Check(Held held, FindingList findings)
    {
        if (held.Procedure is not { Version: { } version } procedure || held.SignOff.Version is not { } typed || held.SignOff.Hash is not { } hash)
            return;
        // another hash is another version: hash-unknown says so
        if (typed.Value == version.Value || held.Hash?.IsBegunBy(hash.Value) != true)
            return;
        findings.Add(
            Info,
            typed.At,
            $"The sign-off says {procedure.Id} {typed.Value}, but its hash is that of {version.Value}.",
            "Pages of two versions may have been mixed on the machine.",
            $"Look at every page: each must say {version.Value} and the same hash. If they do, put the number right.");
    }
}
