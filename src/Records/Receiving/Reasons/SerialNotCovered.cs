using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>The procedure is not for this machine.</summary>
public sealed class SerialNotCovered : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("serial-not-covered");

    public static void Check(Held held, FindingList findings)
    {
        if (held.Procedure is not { } procedure || held.SignOff.Serial is not { } serial)
            return;
        SerialRange?[] ranges = [procedure.AppliesTo?.Value.Serials?.Value, held.Plan?.Scope.Machine?.Serials?.Value];
        if (ranges.FirstOrDefault(r => r is not null && !r.Contains(serial.Value)) is not { } range)
            return;
        findings.Add(
            Info,
            serial.At,
            $"Serial {serial.Value} is not covered: {procedure.Id} is for serials {range}.",
            "Another serial can have other bolts, other discs or another cavity; the numbers of this sheet are not its numbers.",
            "Read the plate on the machine again. If the serial is right, stop, and ask who released the procedure whether it holds for it.");
    }
}
