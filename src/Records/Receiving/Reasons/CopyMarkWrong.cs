using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Records.Issuing;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>The set mark is worked out again from what the blank says that it is for.</summary>
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
        // missing ones are head-missing's; with another hash there is no right mark
        if (Right(held) is not { } right || s is not { Copy: { } copy, Unit: { } unit, Serial: { } serial, Place: { } place, Issued: { } issued, IssuedBy: { } by })
            return;
        // the mark that the head gives
        if (Of(copy) == right)
            return;
        var words = held.Words is { } translated ? $", in the words {translated}" : "";
        findings.Add(
            Info,
            copy.At,
            $"Set mark {copy.Value} does not belong to unit {unit.Value}, serial {serial.Value}, {place.Value}, issued {issued.Value} by {by.Value}{words}.",
            "Either the readings of one wheel end were typed into the blank of another, or a line of the head was changed by hand.",
            "Compare the mark in the corner of the paper with this one, then the head, line by line. Type it again in the blank that was made with this paper.");
    }

    /// <summary>Whether the mark is there and is the one that the head gives.</summary>
    public static bool Fits(Held held) => held.SignOff.Copy is { } copy && Of(copy) == Right(held);

    private static string? Right(Held held) =>
        held is { Hash: { } hash, SignOff: { Hash: { } typed, Unit: { } unit, Serial: { } serial, Place: { } place, Issued: { } issued, IssuedBy: { } by } } && hash.IsBegunBy(typed.Value)
            ? SetMark.Of(hash.Hex, unit.Value, serial.Value, place.Value, issued.Value, by.Value, held.Words)
            : null;

    private static string Of(Located<string> mark) => mark.Value.Trim().ToUpperInvariant();
}
