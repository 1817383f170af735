using Witnessmark.Language.Findings;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>No word about stops. That there was none is a statement, and somebody makes it.</summary>
public sealed class StopsUnsigned : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Query("stops-unsigned");

    public static void Check(Held held, FindingList findings)
    {
        if (Signatures.Closing(held.SignOff.Stops) is not null)
            return;
        findings.Add(
            Info,
            held.SignOff.Stops?.At ?? Head.PlaceOf(held.SignOff, "stops"),
            held.SignOff.Stops is { } s && !Typed.IsEmpty(s) ? $"Stops: {s.Value} is not signed." : "Nothing is said about stops.",
            "Work that was left and taken up again is where steps are lost. An empty line may mean none, or that nobody asked.",
            "Write none and initials: none, MO. Or each stop, and initials at the end.");
    }
}
