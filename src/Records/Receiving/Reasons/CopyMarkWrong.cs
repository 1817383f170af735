using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Issuing;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>The set mark belongs to another copy than the head of the blank says; by the register, and where there is none, by what it is worked out from.</summary>
public sealed class CopyMarkWrong : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("copy-mark-wrong");

    public static void Check(Held held, FindingList findings)
    {
        var s = held.SignOff;
        // of whatever version: no work is done from such a sheet
        if (s.Copy is { } trial && TrialMark.IsOne(Of(trial)))
        {
            findings.Add(
                Info,
                trial.At,
                $"Set mark {trial.Value} is that of a trial sheet, which has errors planted in it. No copy was ever issued with it.",
                "A trial sheet is wrong on purpose: a count, a limit, a torque. What was done by it was not done by the procedure.",
                "Was the machine worked on from that sheet? Keep it tagged, and do every step again from an issued copy. If only the wrong paper was typed, type the copy that was worked from into its own blank.");
            return;
        }
        // missing ones are head-missing's; with another hash there is no right mark; one that nobody registered is copy-unknown's
        if (s is not { Copy: { } copy, Unit: { } unit, Serial: { } serial, Place: { } place, Issued: { } issued, IssuedBy: { } by } || Fits(held) is not false)
            return;
        var words = held.Words is { } translated ? $", in the words {translated}" : "";
        findings.Add(
            Info,
            copy.At,
            $"Set mark {copy.Value} does not belong to unit {unit.Value}, serial {serial.Value}, {place.Value}, issued {issued.Value} by {by.Value}{words}.",
            "Either the readings of one wheel end were typed into the blank of another, or a line of the head was changed by hand.",
            "Compare the mark in the corner of the paper with this one, then the head, line by line. Type it again in the blank that was made with this paper.");
    }

    /// <summary>Whether the mark belongs to what the head says; null when that cannot be told.</summary>
    public static bool? Fits(Held held)
    {
        if (held is not { Hash: { } hash, SignOff: { Hash: { } typed, Copy: { } copy, Unit: { } unit, Serial: { } serial, Place: { } place, Issued: { } issued, IssuedBy: { } by } } || !hash.IsBegunBy(typed.Value))
            return null;
        var head = new CopyIdentity(hash, unit.Value, serial.Value, place.Value, issued.Value, by.Value) { Words = held.Words, Part = held.SignOff.Part?.Value };
        // a workshop that keeps no register has only what the mark was worked out from
        if (held.Library.Register.Copies.IsEmpty)
            return Of(copy) is [_, .. var tail] && tail == SetMark.Tail(head.Lines);
        return held.Copy is { } registered ? Says(registered, hash).SequenceEqual(head.Lines, StringComparer.Ordinal) : null;
    }

    private static string[] Says(IssuedCopy copy, ProcedureHash hash) =>
    [
        hash.IsBegunBy(copy.Hash.Value) ? hash.Hex : copy.Hash.Value, copy.Unit.Value, copy.Serial.Value, copy.Place.Value, copy.IssuedAt.Value, copy.By.Value,
        .. copy.Words is { } words ? new[] { CopyWords.Read(words.Value).ToString() } : [],
        .. copy.Part is { } part ? new[] { $"part {part.Value}" } : [],
    ];

    private static string Of(Located<string> mark) => mark.Value.Trim().ToUpperInvariant();
}
