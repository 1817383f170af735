using Witnessmark.Language.Findings;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>No word about deviations. That there was none is a statement, and somebody makes it.</summary>
public sealed class DeviationsUnsigned : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Query("deviations-unsigned");

    public static void Check(Held held, FindingList findings)
    {
        if (Signatures.Closing(held.SignOff.Deviations) is not null)
            return;
        findings.Add(
            Info,
            held.SignOff.Deviations?.At ?? Head.PlaceOf(held.SignOff, "deviations"),
            held.SignOff.Deviations is { } d && !Typed.IsEmpty(d) ? $"Deviations: {d.Value} is not signed." : "Nothing is said about deviations.",
            "What was done otherwise than printed is what the next one must know. An empty line may mean none, or that nobody asked.",
            "Write none and initials: none, MO. Or what was done otherwise, why, who allowed it, and initials at the end.");
    }
}
