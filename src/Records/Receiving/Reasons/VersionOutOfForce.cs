using Witnessmark.Language.Findings;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>The copy was issued when its version did not hold any more, or the version was withdrawn since.</summary>
public sealed class VersionOutOfForce : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Query("version-out-of-force");

    public static void Check(Held held, FindingList findings)
    {
        // another hash is hash-unknown's; what does not say when it was issued is head-missing's
        if (held is not { Older: { Issued: { } issued } older, SignOff: { Version: { } version, Hash: { } typed } } || held.Hash?.IsBegunBy(typed.Value) != true)
            return;
        // replaced later, by a version that does not say that this one was wrong
        if (older.Withdrawal is null && older.IssuedBefore)
            return;
        findings.Add(
            Info,
            version.At,
            older.Withdrawal is { } withdrawn
                ? $"{held.Procedure!.Id} {older.Printed.Version} was withdrawn on {withdrawn.Date} by {withdrawn.By}{(withdrawn.Why is { } why ? $": {why}" : "")}."
                : $"The copy was issued on {issued}, and {held.Procedure!.Id} {older.Printed.Version} is not in force since {(issued == older.Since ? "that very day" : older.Since)}.",
            "The work was done by a torque, a count or a message that did not hold any more, and was changed for a reason.",
            older.InForce is { } inForce
                ? $"Compare {older.Printed.Version} with {inForce.Version}, in force since {older.InForceSince}, and do again what is done otherwise there. Whoever released {inForce.Version} says in the deviations that the rest stands."
                : "Ask whoever withdrew it whether the work stands, before the machine is given back.",
            [.. Places(older)]);
    }

    private static IEnumerable<FurtherPlace> Places(OutOfForce older)
    {
        if (older.Withdrawal is { } withdrawn)
            yield return new FurtherPlace(withdrawn.Version.At, "withdrawn here");
        if (older.InForce is { } inForce)
            yield return new FurtherPlace(inForce.Version.At, "in force now");
    }
}
