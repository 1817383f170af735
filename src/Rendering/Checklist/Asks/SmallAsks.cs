using System.Globalization;
using Scriban.Runtime;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Rendering.Checklist.Asks;

/// <summary>Asks that fit at the right of a step's words.</summary>
internal static class SmallAsks
{
    public static IEnumerable<ScriptObject> Of(Ask ask, SheetContext context) => ask switch
    {
        { Turns: { } turns } => turns.Names.SelectMany(t => Of(ask with { Turns = null }, context).Select(b => InTurn(t, b))),
        CountAsk count => [Count(count, context)],
        ToolAsk tool => [Box.Write(Box.Tool, context.Words.Tool, under: string.Join(" / ", tool.Tools.Select(context.Tongue.Name)))],
        LookAsk look => look.Reading.Verdicts.Select(v => Box.Strike(context.Tongue.Value(v.Value, look.Key))),
        ChoiceAsk { EndsPart: true } => [Box.Strike(context.Words.PartEnds.ToUpperInvariant())],
        ChoiceAsk { Ends: true } => [Box.Strike(context.Words.EndsHere.ToUpperInvariant())],
        ChoiceAsk choice => choice.Outcomes.Select(o => Box.Strike(context.Words.TestResult(o) ?? context.Tongue.Name(o))),
        _ => [],
    };

    // "CL passed", "CL failed": the turn stands where the hand is
    private static ScriptObject InTurn(string turn, ScriptObject box)
    {
        var key = box["strike"] is true ? "words" : "before";
        box[key] = $"{turn} {box[key]}".TrimEnd();
        return box;
    }

    // the label stands outside the box, the number that is expected behind it
    private static ScriptObject Count(CountAsk ask, SheetContext context)
    {
        var words = context.Words;
        var label = ask.Mark.Length == 1 ? ask.Mark : context.Tongue.Name(ask.Key);
        var expected = ask.Expected.ToString(CultureInfo.InvariantCulture);
        var after = (ask.AtLeast, ask.Expected) switch
        {
            (true, 0) => "",
            (true, _) => $"{expected} {words.OrMore}",
            (false, 0) => $"{words.MustBe} 0",
            _ => $"{words.OutOf} {expected}",
        };
        return Box.Write(Box.Narrow, label, after);
    }
}
