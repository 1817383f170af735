using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Sheets;

/// <summary>What is measured, looked at and worked out.</summary>
internal static class MeasuringReader
{
    private const int MostPoints = 24;
    private const string UpTo = "up to ";
    private const string ClearanceOf = "as clearance of ";

    /// <summary>The <c>readings:</c> of a sheet or of a procedure's front matter.</summary>
    public static Items<ReadingItem> Readings(Fields fields) => new(fields.Each("readings", "{resolution: 0.01 mm, bands: …}", Reading));

    /// <summary>The <c>values:</c> of a sheet or of a procedure's front matter.</summary>
    public static Items<WorkedValue> Values(Fields fields) => new(fields.Each("values", "{formula: …, accept: 2.8 to 3.6 mm}", Worked));

    private static ReadingItem Reading(Located<string> id, Fields reading)
    {
        var points = Points(reading);
        var item = new ReadingItem(id, reading.Map)
        {
            Of = reading.Name("of", "friction-disc"),
            Points = points?.Number,
            UpToPoints = points?.UpTo ?? false,
            PointNames = reading.List("at", "[12, 4, 8]"),
            Resolution = reading.Quantity("resolution", "0.01 mm"),
            Plausible = reading.Range("plausible", "4.50 to 5.50 mm"),
            Judge = reading.OneOf("judge", "each", "least", "most", "mean", "spread", "sum"),
            Bands = Bands(reading),
            Gauge = reading.Name("gauge", "micrometer-25"),
            LookFor = reading.Text("look-for", "scores that a nail catches"),
            Verdicts = [.. reading.List("verdicts", "[sound, scored]").Where(v => Names.Usable(v, reading.Findings))],
            What = reading.Text("what", "shaft end beyond the snap-ring groove"),
            Outside = reading.Text("outside", "stop, call the mechanic"),
            Basis = reading.Text("basis", "maker data"),
        };
        if (reading.Has("look-for") || reading.Has("verdicts"))
            reading.Needs("look-for", "verdicts");
        else
            reading.Needs("resolution");
        return item;
    }

    /// <summary><c>3</c>, or <c>up to 6</c> where there may be fewer.</summary>
    private static (Located<int> Number, bool UpTo)? Points(Fields reading)
    {
        if (reading.Node("points") is not DataText text || !text.Text.StartsWith(UpTo, StringComparison.Ordinal))
            return reading.Count("points", "3", most: MostPoints) is { } fixedNumber ? (fixedNumber, false) : null;
        var entry = reading.Map.Find("points")!;
        var rest = new DataText(text.Text[UpTo.Length..].Trim(), text.At);
        var most = new Fields(new DataMap([entry with { Value = rest }], text.At), reading.What, reading.Findings);
        return most.Count("points", "up to 6", most: MostPoints) is { } number ? (number, true) : null;
    }

    private static ImmutableArray<ReadingBand> Bands(Fields reading)
    {
        if (reading.Below("bands", $"bands of {reading.What}", "{good: 4.92 to 5.08 mm}") is not { } bands)
            return [];
        return
        [
            .. bands.Map.Entries.Where(e => Names.Usable(e.Key, reading.Findings))
                .Select(e => (Name: e.Key, Range: bands.Range(e.Key.Value, "4.92 to 5.08 mm")))
                .Where(b => b.Range is not null)
                .Select(b => new ReadingBand(b.Name, b.Range!.Value)),
        ];
    }

    private static WorkedValue Worked(Located<string> id, Fields value)
    {
        var clearanceOf = ClearanceStack(value);
        var item = new WorkedValue(id, value.Map)
        {
            Formula = value.Text("formula", "mean of cavity-depth - sum of disc-thickness"),
            Accept = clearanceOf is null ? value.Range("accept", "2.8 to 3.6 mm") : null,
            AcceptAsClearanceOf = clearanceOf,
            Round = value.Quantity("round", "0.01 mm"),
            FromStock = value.Quantities("from-stock", "0.05 mm"),
            Pieces = value.Text("pieces", "up to 3"),
            Outside = value.Text("outside", "ring stays off, call the mechanic"),
            Basis = value.Text("basis", "maker data"),
        };
        value.Needs("formula");
        return item;
    }

    private static Located<string>? ClearanceStack(Fields value) =>
        value.Node("accept") is DataText text && text.Text.StartsWith(ClearanceOf, StringComparison.Ordinal) && text.Located() is var written
            ? new Located<string>(text.Text[ClearanceOf.Length..].Trim(), written.Part(new TextSpan(ClearanceOf.Length, text.Text.Length)))
            : null;
}
