using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>No plausible reading can fall into a band.</summary>
public sealed class BandOutOfReach : IMeasuringRule
{
    public static RuleInfo Info { get; } = new("band-out-of-reach", "Readings", Severity.Query);

    public static void Check(Measuring declared, FindingList findings)
    {
        foreach (var reading in declared.Readings)
        {
            // without bands, or without a bound for what is judged, everything is in reach
            if (BandLine.Of(reading) is not { Judged: { } judged } line)
                continue;
            foreach (var band in line.Bands.Where(b => !line.Reaches(b)))
                findings.Add(
                    Info,
                    band.Range.At,
                    $"No {reading.Id.Spoken()} can be {band.Name.Value} ({band.Range.Value}): only {judged} is plausible.",
                    "A reading in that band is sent back as a slip of the pen, so what the band asks for is never done.",
                    "Widen what is plausible until the band lies inside, or look the limit of the band up again.",
                    new FurtherPlace(reading.Plausible!.Value.At, $"plausible: {reading.Plausible.Value.Value}"));
        }
    }
}
