using Witnessmark.Language.Findings;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>The paper is not the procedure as it stands here.</summary>
public sealed class HashUnknown : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("hash-unknown");

    public static void Check(Held held, FindingList findings)
    {
        if (held.Hash is not { } hash || held.Procedure is not { } procedure || held.SignOff.Hash is not { } typed)
            return;
        if (hash.IsBegunBy(typed.Value))
            return;
        var other = held.Released.FirstOrDefault(r => r.Procedure == procedure.Id.Value && new ProcedureHash("", r.Hex).IsBegunBy(typed.Value));
        var here = $"{procedure.Id} {procedure.Version} here is {hash.Short12}";
        findings.Add(
            Info,
            typed.At,
            other is null
                ? $"The hash {typed.Value} is of no known version of {procedure.Id}; {here}."
                : $"The hash {typed.Value} is that of {procedure.Id} {other.Version}; {here}.",
            "The hash says which steps, numbers and messages were on the paper. With another one, the work was done from another sheet.",
            other is null
                ? "Copy the twelve characters from the foot of the paper. If they are right, find the version that was printed before anybody signs for this work."
                : $"{(other.NotAtHand.Length > 0 ? $"{other.NotAtHand} " : "")}Work out with whoever released {procedure.Version} what has changed since {other.Version} and whether the work stands; receive the record where {other.Version} is in force.");
    }
}
