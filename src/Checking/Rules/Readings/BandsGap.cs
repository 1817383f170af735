using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>A reading can come out where no band names the result.</summary>
public sealed class BandsGap : IMeasuringRule
{
    public static RuleInfo Info { get; } = new("bands-gap", "Readings", Severity.Fault);

    public static void Check(Measuring declared, FindingList findings)
    {
        foreach (var reading in declared.Readings)
            // a reading without bands has no line to leave gaps in
            if (BandLine.Of(reading) is { } line)
                foreach (var gap in line.Gaps())
                    Report(reading, gap, findings);
    }

    private static void Report(ReadingItem reading, BandGap gap, FindingList findings)
    {
        // with two neighbours the upper one is shown and the lower one named beside it
        ImmutableArray<FurtherPlace> lower = gap is { Below: { } below, Above: not null } ? [new FurtherPlace(below.Range.At, $"{below.Name.Value}: {below.Range.Value}")] : [];
        findings.Add(
            Info,
            gap.Above?.Range.At ?? gap.Below!.Name.At,
            $"{Where(gap)} a {reading.Id.Spoken()} has no result, and {gap.Run} can be read.",
            "Whoever reads that number finds nothing on the sheet for it and decides alone, under pressure of time.",
            PutRight(gap),
            lower);
    }

    private static string Where(BandGap gap) => gap switch
    {
        { Below: { } below, Above: { } above } => $"Between {Named(below)} and {Named(above)}",
        { Above: { } first } => $"Below {Named(first)}",
        _ => $"Above {Named(gap.Below!)}",
    };

    private static string Named(ReadingBand band) => $"{band.Name.Value} ({band.Range.Value})";

    private static string PutRight(BandGap gap) => gap switch
    {
        { Below: { } below, Above: { } above } =>
            $"Let one begin where the other stops: `{above.Name.Value}: {above.Range.Value with { Low = BandLine.Other(below.Range.Value.High!.Value) }}`.",
        { Above: { } first } => $"Name what it is then, or let the lowest band take it in: `{first.Name.Value}: {first.Range.Value with { Low = null }}`.",
        { Below: { } last } => $"Name what it is then, or let the highest band take it in: `{last.Name.Value}: {last.Range.Value with { High = null }}`.",
        _ => "Name what it is then.",
    };
}
