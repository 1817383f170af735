using System.Globalization;
using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Checklist.Asks;

/// <summary>Readings: one row a piece, one box a point. Many pieces stand in two tables side by side.</summary>
internal static class ReadingGrid
{
    private const int PointsInHalf = 3;

    /// <param name="named">Its name is printed: the step has other readings too.</param>
    public static ScriptObject Of(ReadingAsk ask, bool named, SheetContext context)
    {
        var words = context.Words;
        var judge = ask.Points * ask.Pieces.Length > 1 ? words.Judge(ask.Reading.Judge?.Value) : "";
        return new ScriptObject
        {
            ["caption"] = context.Tongue.Name(ask.Key),
            ["named"] = named,
            ["limits"] = ask.Accept is { } accept ? context.Quantities.Of(accept, judge, ask.Reading.JudgesDifference) : null,
            ["bands"] = BandWords.Of(ask, context),
            ["unit"] = ask.Accept is null && (ask.Reading.Bands.IsEmpty || ask.Pieces.Length == 1) ? UnitOf(ask) : "",
            ["single"] = ask.Pieces.Length == 1,
            ["dot"] = Box.Dot(ask.Reading),
            ["points"] = Points(ask, context.Tongue),
            ["tables"] = Tables(ask),
        }.Showing("sheet-readings.html");
    }

    // by name where the data sheet names them: "4" at four o'clock is no second box
    private static ScriptArray Points(ReadingAsk ask, Tongue tongue)
    {
        var names = ask.Reading.PointNames;
        return new ScriptArray(names.Length == ask.Points
            ? names.Select(n => tongue.Name(n.Value))
            : Enumerable.Range(1, ask.Points).Select(i => i.ToString(CultureInfo.InvariantCulture)));
    }

    private static ScriptArray Tables(ReadingAsk ask)
    {
        var perTable = ask.Points <= PointsInHalf ? (ask.Pieces.Length + 1) / 2 : ask.Pieces.Length;
        return new ScriptArray(ask.Pieces.Chunk(perTable).Select(rows => new ScriptArray(rows)));
    }

    private static string UnitOf(ReadingAsk ask) =>
        (ask.Reading.Resolution?.Value.Unit ?? ask.Reading.Plausible?.Value.Unit)?.Symbol ?? "";
}
