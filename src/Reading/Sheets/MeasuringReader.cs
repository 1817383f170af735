using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

/// <summary>What is measured, looked at and worked out.</summary>
internal static class MeasuringReader
{
    private const string ClearanceOf = "as clearance of ";

        private static readonly Shape Bands = new("bands", "bands")
    {
        Other = Row.Range("good", "4.92 to 5.08 mm", "readings of this band"),
        OtherKeys = Row.AName,
    };

    private static readonly Shape ReadingShape = new(
        "reading",
        "a reading",
        Row.Name("of", "friction-disc", "what is measured"),
        Row.Written("points", new CountForm(1, 24) { Before = "up to " }, "3", "how many points are read; `up to 6` where there may be fewer"),
        Row.List("at", "[12, 4, 8]", "what the points are called"),
        Row.Quantity("resolution", "0.01 mm", "the smallest difference that is read"),
        Row.Range("plausible", "4.50 to 5.50 mm", "what a reading can be at all; outside it was misread"),
        Row.Word("judge", ["each", "least", "most", "mean", "spread", "sum"], "what of the points is judged"),
        Row.Below("bands", Bands, "{good: 4.92 to 5.08 mm}", "what readings mean: a range for each verdict"),
        Row.Name("gauge", "micrometer-25", "what it is read with"),
        Row.Name("taken-after", "hub-turns", "what must be looked at or measured first, so that this reads true"),
        Row.Text("look-for", "scores that a nail catches", "what is looked for where nothing is measured"),
        Row.List("verdicts", "[sound, scored]", "what can be found then", Row.AName),
        Row.Text("what", "shaft end beyond the snap-ring groove", "what exactly is measured"),
        Row.Text("outside", "stop, call the mechanic", "what to do outside the bands"),
        Row.Basis)
    {
        Needs = [new FirstBegun(["look-for", "verdicts"], ["resolution"])],
    };

    private static readonly Shape ValueShape = new(
        "worked-value",
        "a worked value",
        Row.Text("formula", "mean of cavity-depth - sum of disc-thickness", "how it is worked out").Must,
        Row.Written("accept", new SizeForm(Size.Range, null, LeastSize.Anything) { Or = $"^{ClearanceOf}" }, "2.8 to 3.6 mm", "what is accepted; or `as clearance of` a stack"),
        Row.Quantity("round", "0.01 mm", "to what it is rounded"),
        Row.List("from-stock", "[0.05 mm, 0.10 mm]", "sizes that it is put together from", new SizeForm(Size.Quantity, null, LeastSize.Anything)),
        Row.Text("pieces", "up to 3", "how many pieces that takes"),
        Row.Text("outside", "ring stays off, call the mechanic", "what to do outside of what is accepted"),
        Row.Basis);

    /// <summary>The <c>readings:</c> of a sheet or of a procedure's front matter.</summary>
    public static readonly Row Readings = Row.Each("readings", ReadingShape, "{resolution: 0.01 mm, bands: {good: 4.92 to 5.08 mm}}", "what is measured or looked at");

    /// <summary>The <c>values:</c> of a sheet or of a procedure's front matter.</summary>
    public static readonly Row Values = Row.Each("values", ValueShape, "{formula: mean of cavity-depth, accept: 2.8 to 3.6 mm}", "what is worked out from readings");

    public static Items<ReadingItem> ReadReadings(Fields fields) => new(fields.Each(Readings.Key, Reading));

    public static Items<WorkedValue> ReadValues(Fields fields) => new(fields.Each(Values.Key, Worked));

    private static ReadingItem Reading(Located<string> id, Fields reading)
    {
        var points = reading.CountUpTo("points");
        return new ReadingItem(id, reading.Map)
        {
            Of = reading.Text("of"),
            Points = points?.Number,
            UpToPoints = points?.UpTo ?? false,
            PointNames = reading.List("at"),
            Resolution = reading.Quantity("resolution"),
            Plausible = reading.Range("plausible"),
            Judge = reading.Text("judge"),
            Bands = ReadBands(reading),
            Gauge = reading.Text("gauge"),
            TakenAfter = reading.Text("taken-after"),
            LookFor = reading.Text("look-for"),
            Verdicts = reading.List("verdicts"),
            What = reading.Text("what"),
            Outside = reading.Text("outside"),
            Basis = reading.Text("basis"),
        };
    }

    private static ImmutableArray<ReadingBand> ReadBands(Fields reading) => reading.Below("bands", $"bands of {reading.What}") is { } bands
        ?
        [
            .. bands.Map.Entries.Where(e => Names.Usable(e.Key, reading.Findings))
                .Select(e => (Name: e.Key, Range: bands.Range(e.Key.Value)))
                .Where(b => b.Range is not null)
                .Select(b => new ReadingBand(b.Name, b.Range!.Value)),
        ]
        : [];

    private static WorkedValue Worked(Located<string> id, Fields value)
    {
        var clearanceOf = ClearanceStack(value);
        return new WorkedValue(id, value.Map)
        {
            Formula = value.Text("formula"),
            Accept = clearanceOf is null ? value.Range("accept") : null,
            AcceptAsClearanceOf = clearanceOf,
            Round = value.Quantity("round"),
            FromStock = value.Quantities("from-stock"),
            Pieces = value.Text("pieces"),
            Outside = value.Text("outside"),
            Basis = value.Text("basis"),
        };
    }

    private static Located<string>? ClearanceStack(Fields value) =>
        value.Node("accept") is DataText text && text.Text.StartsWith(ClearanceOf, StringComparison.Ordinal) && text.Located() is var written
            ? new Located<string>(text.Text[ClearanceOf.Length..].Trim(), written.Part(new TextSpan(ClearanceOf.Length, text.Text.Length)))
            : null;
}
