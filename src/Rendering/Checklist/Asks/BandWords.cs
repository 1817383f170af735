using Scriban.Runtime;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Rendering.Checklist.Asks;

/// <summary>What a reading can come out as, where no limit is printed beside its boxes: a test or a decision goes by it.</summary>
internal static class BandWords
{
    /// <summary>Each band with its name, as large as a limit; none where the step stops at a limit.</summary>
    public static ScriptArray Of(ReadingAsk ask, SheetContext context) => ask.Accept is not null
        ? []
        : new ScriptArray(ask.Reading.Bands.Select((b, i) => context.Quantities.Of(
            b.Range.Value,
            (i == 0 ? Judge(ask, context) : "") + context.Tongue.Value(b.Name.Value, ask.Key),
            ask.Reading.JudgesDifference)));

    private static string Judge(ReadingAsk ask, SheetContext context) =>
        ask.Points * ask.Pieces.Length > 1 && context.Words.Judge(ask.Reading.Judge?.Value) is { Length: > 0 } judge ? $"{judge}: " : "";
}
