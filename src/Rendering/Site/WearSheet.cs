using System.Collections.Immutable;
using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Receiving;
using Witnessmark.Records.Wear;
using Witnessmark.Rendering.Figures;
using Witnessmark.Rendering.Messages;
using Witnessmark.Rendering.Site.Drawings;

namespace Witnessmark.Rendering.Site;

/// <summary>How parts of a machine wear, unit by unit and place by place, and which sign-offs could not say. What was typed is quoted, cut and escaped.</summary>
internal static class WearSheet
{
    private const int MostTrends = 40;
    private const int MostPoints = 60;
    private const int MostListed = 20;
    private const int LongestName = 24;

    /// <summary>Null when no sign-off came back for it.</summary>
    public static ScriptObject? Of(Machine machine, WearLog log, Words words)
    {
        var left = log.LeftOut.Where(l => l.Machine is null || l.Machine == machine.Id.Value).ToList();
        var all = log.Readings.Where(r => r.Machine == machine.Id.Value)
            .GroupBy(r => (r.Unit, r.Place, Reading: r.Reading.Id.Value))
            .OrderBy(g => g.Key.Unit, StringComparer.Ordinal).ThenBy(g => g.Key.Place, StringComparer.Ordinal).ThenBy(g => g.Key.Reading, StringComparer.Ordinal)
            .Select(g => g.OrderBy(r => r.Hours).ToImmutableArray()).ToLookup(IsTrend);
        if (left.Count == 0 && all.Count == 0)
            return null;
        var trends = all[true].ToList();
        return new ScriptObject
        {
            ["trends"] = new ScriptArray(trends.Take(MostTrends).Select((t, i) => Trend(t, i, words))),
            ["more"] = trends.Count > MostTrends ? $"{Say.Count(trends.Count - MostTrends, "more trend")} not drawn." : "",
            ["single"] = Say.Some(all[false].Select(s => $"{Where(s[0], words)}, {Name(s[0], words)} {s[0].Value} at {Hours(s[0])}")),
            ["left_says"] = LeftSays(left.Count),
            ["left"] = new ScriptArray(left.Take(MostListed).Select(Left)),
        };
    }

    private static bool IsTrend(ImmutableArray<WornReading> readings) => readings[0].Hours < readings[^1].Hours;

    private static ScriptObject Trend(ImmutableArray<WornReading> readings, int which, Words words)
    {
        var first = readings[0];
        ImmutableArray<WornReading> latest = [.. readings.TakeLast(MostPoints)];
        var wear = new WearReadings(
            $"{Name(first, words)}, {Where(first, words)}", [.. latest.Select(r => new WearPoint(r.Hours, r.Value))], first.Part.WornAt!.Value.Value, WornAbove: false);
        var drawn = new Drawing(WearTrend.Draw(FigureId.Of("wear", which), wear, words), $"{DeclaredName.Spoken(first.Part.Id.Value)}, {Where(first, words)}. {words.Limit} {first.Part.WornAt.Value.Value}");
        return new ScriptObject
        {
            ["name"] = $"{DeclaredName.Spoken(first.Part.Id.Value)}, {Where(first, words)}",
            ["figure"] = drawn.Model,
            ["caption"] = $"{Say.Capital(Name(first, words))}{(readings.Length > MostPoints ? $", the latest {Say.Number(MostPoints)} of {Say.Number(readings.Length)}" : "")}",
            ["rows"] = new ScriptArray(latest.Select(Row)),
        };
    }

    private static ScriptObject Row(WornReading reading) => new()
    {
        ["hours"] = Hours(reading),
        ["reading"] = $"{reading.Value}",
        ["copy"] = Quoted(reading.Copy),
        ["record"] = Quoted(reading.Record),
    };

    private static string LeftSays(int count) => count switch
    {
        0 => "",
        > MostListed => $"{Say.Count(count, "record")} gave no point; the first {Say.Number(MostListed)} are named here. A record is held against the version that it was typed from, where git has kept that one.",
        _ => $"{Say.Count(count, "record")} gave no point. A record is held against the version that it was typed from, where git has kept that one.",
    };

    private static ScriptObject Left(LeftOutRecord record) => new()
    {
        ["path"] = Quoted(record.Path),
        ["state"] = record.State switch { ReceptionState.Refused => "refused", ReceptionState.Open => "open", _ => "complete" },
        ["why"] = Visible.Text(record.Why),
    };

    private static string Name(WornReading reading, Words words) =>
        $"{DeclaredName.Spoken(reading.Reading.Id.Value)}, {words.Judge(reading.Reading.Judge?.Value is "mean" or "most" ? reading.Reading.Judge.Value.Value : "least")}";

    private static string Where(WornReading reading, Words words) => $"{words.Unit} {Cut(reading.Unit)} {Cut(reading.Place)}";

    private static string Hours(WornReading reading) => $"{Say.Number(reading.Hours)} h";

    private static string Cut(string text) => text.Length <= LongestName ? Quoted(text) : Quoted(text[..LongestName]) + "…";

    private static string Quoted(string text) => Visible.Text(Say.Short(text));
}
