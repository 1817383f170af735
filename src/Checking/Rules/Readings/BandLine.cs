using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>The bands of a reading laid out on a line, lowest first.</summary>
/// <param name="Judged">What can come out of the measuring at all; null when the sheet does not bound it.</param>
/// <param name="Step">What is judged falls on multiples of it; null when it may fall between, as a mean does.</param>
internal sealed record BandLine(ReadingItem Reading, ImmutableArray<ReadingBand> Bands, QuantityRange? Judged, Quantity? Step)
{
    /// <summary>Finer than any gauge, in any unit of the table: below it a reading counts as free to fall anywhere.</summary>
    private const decimal FinestStep = 0.000001m;

    /// <summary>Null for a reading without bands, and for one whose numbers are not of one kind.</summary>
    public static BandLine? Of(ReadingItem reading)
    {
        if (reading.Bands.IsEmpty || !reading.IsOfOneKind())
            return null;
        var sorted = reading.Bands.Sort(ByLow);
        var step = reading.Judge?.Value == "mean" || reading.Resolution is not { Value.Number: >= FinestStep } resolution ? (Quantity?)null : resolution.Value;
        return new BandLine(reading, sorted, JudgedRange(reading), step);
    }

    /// <summary>Runs between two neighbours, and before the first and behind the last, that no band covers.</summary>
    public IEnumerable<BandGap> Gaps()
    {
        var before = default(ReadingBand);
        var begin = Judged?.Low;
        foreach (var band in Bands)
        {
            if (begin is { } low && band.Range.Value.Low is { } high && Run(low, Other(high)) is { } run)
                yield return new BandGap(before, run, band);
            // an end that is open upward leaves nothing behind it
            if (band.Range.Value.High is not { } end)
                yield break;
            if (before is null || begin is not { } reached || end.Value.CompareTo(reached.Value) >= 0)
                (before, begin) = (band, Other(end));
        }
        if (begin is { } last && Judged?.High is { } top && Run(last, top) is { } rest)
            yield return new BandGap(before, rest, null);
    }

    /// <summary>Neighbours that share values.</summary>
    public IEnumerable<BandOverlap> Overlaps()
    {
        foreach (var (lower, upper) in Bands.Zip(Bands.Skip(1)))
        {
            var low = upper.Range.Value.Low ?? lower.Range.Value.Low;
            var high = Lesser(lower.Range.Value.High, upper.Range.Value.High);
            if (low is not { } from || high is not { } to || !IsEmpty(from, to))
                yield return new BandOverlap(lower, upper, new QuantityRange(low, high));
        }
    }

    /// <summary>Whether a judged value can fall into the band at all.</summary>
    public bool Reaches(ReadingBand band) =>
        Judged is not { } judged
        || !((band.Range.Value.Low is { } low && judged.High is { } top && IsEmpty(low, top))
            || (band.Range.Value.High is { } high && judged.Low is { } bottom && IsEmpty(bottom, high)));

    /// <summary>The run between two ends when a value can fall into it.</summary>
    private QuantityRange? Run(Bound low, Bound high)
    {
        if (IsEmpty(low, high))
            return null;
        return Step is { } step && !HoldsStep(low, high, step) ? null : new QuantityRange(low, high);
    }

    private static bool HoldsStep(Bound low, Bound high, Quantity step)
    {
        var from = low.Value.In(step.Unit).Number / step.Number;
        var to = high.Value.In(step.Unit).Number / step.Number;
        var first = low.Inclusive ? Math.Ceiling(from) : Math.Floor(from) + 1;
        return high.Inclusive ? first <= to : first < to;
    }

    private static bool IsEmpty(Bound low, Bound high) =>
        low.Value.CompareTo(high.Value) is var order && (order > 0 || (order == 0 && !(low.Inclusive && high.Inclusive)));

    /// <summary>The same end seen from the other side: what begins where this stops.</summary>
    internal static Bound Other(Bound end) => end with { Inclusive = !end.Inclusive };

    private static Bound? Lesser(Bound? a, Bound? b) =>
        a is not { } x ? b : b is not { } y ? a : x.Value.CompareTo(y.Value) is var order && (order < 0 || (order == 0 && !x.Inclusive)) ? a : b;

    private static int ByLow(ReadingBand a, ReadingBand b) => (a.Range.Value.Low, b.Range.Value.Low) switch
    {
        (null, null) => 0,
        (null, _) => -1,
        (_, null) => 1,
        ({ } x, { } y) => x.Value.CompareTo(y.Value) is not 0 and var order ? order : y.Inclusive.CompareTo(x.Inclusive),
    };

    private static QuantityRange? JudgedRange(ReadingItem reading) => (reading.Judge?.Value, reading.Plausible?.Value) switch
    {
        // a sum of so many pieces has no bound that a single reading could give
        ("sum", _) or (_, null) => null,
        // a spread goes from nothing up to the width of what is plausible
        ("spread", { Low: { } low, High: { } high }) =>
            QuantityRange.Between(low.Value with { Number = 0 }, high.Value with { Number = high.Value.Number - low.Value.In(high.Value.Unit).Number }),
        ("spread", _) => null,
        (_, { } plausible) => plausible,
    };
}

/// <param name="Below">The band under the gap, or null at the lower end.</param>
/// <param name="Above">The band over the gap, or null at the upper end.</param>
internal sealed record BandGap(ReadingBand? Below, QuantityRange Run, ReadingBand? Above);

internal sealed record BandOverlap(ReadingBand Lower, ReadingBand Upper, QuantityRange Run);
