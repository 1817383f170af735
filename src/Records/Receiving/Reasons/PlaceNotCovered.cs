using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>The procedure is not for this place of the machine.</summary>
public sealed class PlaceNotCovered : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("place-not-covered");

    public static void Check(Held held, FindingList findings)
    {
        if (held.Procedure?.AppliesTo?.Value.Positions is not { Length: > 0 } positions || held.SignOff.Place is not { } place)
            return;
        if (positions.Any(p => p.Value == place.Value))
            return;
        findings.Add(
            Info,
            place.At,
            $"{held.Procedure.Id} is for {Say.Some(positions.Select(p => p.Value))}, not for {place.Value}.",
            "What is right at one wheel end can be wrong at another.",
            "Write the place where the work was done. If that is it, the sheet was the wrong one: stop, and ask who released it.");
    }
}
