using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>A reading can fall into two bands at once.</summary>
public sealed class BandsOverlap : IMeasuringRule
{
    public static RuleInfo Info { get; } = new("bands-overlap", "Readings", Severity.Fault);

    public static void Check(Measuring declared, FindingList findings)
    {
        foreach (var reading in declared.Readings)
            // a reading without bands has nothing that could overlap
            if (BandLine.Of(reading) is { } line)
                foreach (var (lower, upper, run) in line.Overlaps())
                    findings.Add(
                        Info,
                        upper.Range.At,
                        $"A {reading.Id.Spoken()} of {run} is both {lower.Name.Value} ({lower.Range.Value}) and {upper.Name.Value} ({upper.Range.Value}).",
                        "Two people read one number and do two different things with the part, and both are right by the sheet.",
                        PutRight(lower, upper),
                        new FurtherPlace(lower.Range.At, $"{lower.Name.Value}: {lower.Range.Value}"));
    }

    private static string PutRight(ReadingBand lower, ReadingBand upper)
    {
        // a lower band that is open upward swallows the other: only its author knows where it should stop
        if (lower.Range.Value.High is not { } end || (upper.Range.Value.High is { } top && top.Value.CompareTo(end.Value) <= 0))
            return $"Say where {lower.Name.Value} stops and {upper.Name.Value} begins.";
        return $"Let one begin where the other stops: `{upper.Name.Value}: {upper.Range.Value with { Low = BandLine.Other(end) }}`.";
    }
}
