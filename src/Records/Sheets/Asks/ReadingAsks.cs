using System.Collections.Immutable;
using System.Globalization;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Records.Sheets;

internal static class ReadingAsks
{
    public static IEnumerable<Ask> Of(string written, StepInPlace place, StepNames names)
    {
        if (names.Reading(written) is not { } reading)
            return [];
        var stops = StopIfs.Of(reading.Id.Value, reading.Results, place, names);
        if (reading.IsLook)
            return [new LookAsk(reading.Id.Value, reading) { Stops = stops }];
        var points = reading.Points?.Value ?? 1;
        return [new ReadingAsk(reading.Id.Value, reading, Pieces(reading, names), points, Accept(reading, stops)) { Stops = stops }];
    }

    private static ImmutableArray<string> Pieces(ReadingItem reading, StepNames names)
    {
        if (reading.Of is not { } of || names.Part(of.Value) is not { } part)
            return [""];
        return [.. Enumerable.Range(1, part.Count?.Value ?? 1).Select(i => part.Letters + i.ToString(CultureInfo.InvariantCulture))];
    }

    /// <summary>Bands for which the step does not stop, as one range; null when it stops for none or they leave a gap.</summary>
    private static QuantityRange? Accept(ReadingItem reading, ImmutableArray<string> stops) =>
        stops.IsEmpty ? null : Bands.Joined(reading.Bands.Where(b => !stops.Contains(b.Name.Value)).Select(b => b.Range.Value));
}
