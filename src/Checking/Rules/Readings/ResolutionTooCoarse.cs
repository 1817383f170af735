using System.Globalization;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>A reading is taken in steps too large for the band that it is judged by.</summary>
public sealed class ResolutionTooCoarse : IMeasuringRule
{
    /// <summary>Steps in a band: with fewer, the step decides as much as the part does. Common practice.</summary>
    private const int LeastSteps = 10;

    public static RuleInfo Info { get; } = new("resolution-too-coarse", "Readings", Severity.Query);

    public static void Check(Measuring declared, FindingList findings)
    {
        foreach (var reading in declared.Readings)
            // without a step or a band with two ends there is nothing to compare
            if (reading.Resolution is { Value.Number: > 0 } step && reading.IsOfOneKind() && Narrowest(reading) is { } band)
                Check(reading, step.Value, band, findings);
    }

    private static void Check(ReadingItem reading, Quantity step, ReadingBand band, FindingList findings)
    {
        var width = Width(band, step.Unit);
        // ten steps or more
        if (step.Number * LeastSteps <= width)
            return;
        var wide = new Quantity(width, step.Unit);
        findings.Add(
            Info,
            reading.Resolution!.Value.At,
            $"The {reading.Id.Spoken()} is read in steps of {step}; the band {band.Name.Value} ({band.Range.Value}) is {wide} wide, {Steps(width / step.Number)}.",
            "With so few steps, rounding decides as much as the part: a good part is scrapped, a bad one stays in.",
            $"Read it to {Finer(width, step.Unit)} with a finer gauge.",
            new FurtherPlace(band.Range.At, $"{wide} wide"));
    }

    /// <summary>Narrowest band with two different ends.</summary>
    private static ReadingBand? Narrowest(ReadingItem reading) => reading.Bands
        .Where(b => b.Range.Value is { Low: { } low, High: { } high } && low.Value.CompareTo(high.Value) < 0)
        .MinBy(b => Width(b, reading.Resolution!.Value.Value.Unit));

    private static decimal Width(ReadingBand band, Unit unit) =>
        band.Range.Value.High!.Value.Value.In(unit).Number - band.Range.Value.Low!.Value.Value.In(unit).Number;

    private static string Steps(decimal steps) =>
        $"{steps.ToString("0.#", CultureInfo.InvariantCulture)} steps";

    /// <summary>The next power of ten that makes ten steps.</summary>
    private static Quantity Finer(decimal width, Unit unit)
    {
        var step = 1m;
        while (step * LeastSteps > width && step > 0.000001m)
            step /= LeastSteps;
        return new Quantity(step, unit);
    }
}
