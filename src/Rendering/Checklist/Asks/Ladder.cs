using System.Globalization;
using Scriban.Runtime;
using Witnessmark.Engineering.Printing;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Figures;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Checklist.Asks;

/// <summary>The stack as a page to read: left, right, next line. Each cell is struck as its part goes in.</summary>
internal static class Ladder
{
    /// <summary>Lines that the shorter paper holds below the step's words and two messages.</summary>
    private const int MostRows = 16;

    /// <summary>One ladder, or several for a stack that is taller than a page: it is parted between lines, never in one.</summary>
    public static IEnumerable<ScriptObject> Of(StackAsk ask, SheetStep step, CheckAsk? check, SheetContext context)
    {
        var rows = Rows(ask.Cells);
        var ladders = Parted(rows).ToList();
        for (var i = 0; i < ladders.Count; i++)
            yield return One(ladders[i], i, ladders.Count, new Whole(ask, step, check, context));
    }

    private sealed record Whole(StackAsk Ask, SheetStep Step, CheckAsk? Check, SheetContext Context);

    private static ScriptObject One(List<List<LadderCell>> rows, int at, int count, Whole whole)
    {
        var (ask, step, check, context) = whole;
        var words = context.Words;
        var before = ask.Cells.TakeWhile(c => c.Position < rows[0][0].Position).LastOrDefault();
        var last = at == count - 1;
        return new ScriptObject
        {
            ["from"] = before is null ? context.StackEnd(ask.Stack, ask.Stack.From?.Value) : $"… {before.Label}",
            ["figure"] = Drawn(FigureId.Of("stack", step, ask) + (at == 0 ? "" : $"-piece-{at + 1}"), rows, ask.Stack, last, context.Tongue, words),
            ["rows"] = new ScriptArray(rows.Select(r => Row(r, ask.Stack, context))),
            ["total"] = last ? string.Create(CultureInfo.InvariantCulture, $"{ask.Cells.Length} {words.In}") : "",
            ["left"] = $"0 {words.Left}",
            ["by"] = Box.By(words),
            ["second"] = Second(ask, rows, step, check, context),
            ["words"] = WordsOf(words),
        }.Showing("sheet-ladder.html");
    }

    // pieces of about the same height
    private static IEnumerable<List<List<LadderCell>>> Parted(List<List<LadderCell>> rows)
    {
        var pieces = (rows.Count + MostRows - 1) / MostRows;
        return rows.Chunk(Math.Max(1, (rows.Count + pieces - 1) / Math.Max(1, pieces))).Select(c => c.ToList());
    }

    /// <summary>The stack in section, to one scale, the end that building starts from at the top.</summary>
    private static RawHtml Drawn(string name, List<List<LadderCell>> rows, PartStack stack, bool last, Tongue tongue, Words words)
    {
        var to = words.StackEnd(tongue, stack, stack.To?.Value);
        var title = $"{words.SectionOfStack}: {words.StackEnd(tongue, stack, stack.From?.Value)} – {to}";
        return new RawHtml(StackSection.Draw(name, Pieces(rows, stack), SheetMeasures.LadderRow.Millimetres, last ? to : "", title));
    }

    /// <summary>A line has one part with teeth outside and behind it one with teeth inside, or either alone.</summary>
    public static List<List<LadderCell>> Rows(IEnumerable<LadderCell> cells)
    {
        var rows = new List<List<LadderCell>>();
        foreach (var cell in cells)
        {
            if (rows.Count == 0 || rows[^1].Count == 2 || cell.Outer || !rows[^1][0].Outer)
                rows.Add([]);
            rows[^1].Add(cell);
        }
        return rows;
    }

    private static ScriptObject Row(List<LadderCell> row, PartStack stack, SheetContext context) => new()
    {
        ["outer"] = row.FirstOrDefault(c => c.Outer) is { } o ? Cell(o, stack, context) : null,
        ["inner"] = row.FirstOrDefault(c => !c.Outer) is { } i ? Cell(i, stack, context) : null,
    };

    private static ScriptObject Cell(LadderCell cell, PartStack stack, SheetContext context) => new()
    {
        ["label"] = cell.Label,
        ["position"] = cell.Position,
        ["facing"] = cell.FacedTo is null ? "" : context.Words.FacingTo,
        ["end"] = cell.FacedTo is null ? "" : context.StackEnd(stack, cell.FacedTo),
    };

    private static List<IReadOnlyList<StackSection.Piece>> Pieces(List<List<LadderCell>> rows, PartStack stack) =>
    [
        .. rows.Select(r => r.Select(c => new StackSection.Piece(
            c.Label, c.Part.Thickness?.Value.Target.In(UnitTable.Get("mm")).Number, c.Outer,
            c.FacedTo is null ? null : c.FacedTo == stack.From?.Value)).ToList()),
    ];

    // the second person's questions are answered while the answer can still be seen
    private static ScriptObject Second(StackAsk ask, List<List<LadderCell>> rows, SheetStep step, CheckAsk? check, SheetContext context)
    {
        var faced = ask.Cells.Where(c => c.FacedTo is not null).ToList();
        var here = rows.SelectMany(r => r).Where(faced.Contains).ToList();
        var call = CallWords.Of(step, context);
        var first = rows[0][0].Label;
        return new ScriptObject
        {
            ["role"] = check is null ? "" : context.Tongue.Name(check.Role),
            ["before"] = new ScriptArray(here.Where(f => f == faced[0]).Select(f => $"{f.Label} {context.Words.Shows}")),
            ["after"] = new ScriptArray(here.Where(f => f != faced[0]).Select(f => $"{f.Label} {context.Words.Shows}")),
            ["calls"] = call?.Call.Replace("___", first, StringComparison.Ordinal) ?? "",
            ["hears"] = call?.Answer.Replace("___", first, StringComparison.Ordinal) ?? "",
            ["marks"] = new ScriptArray(ask.Cells.Select(c => c.Part.Letters).Distinct()),
        };
    }

    private static ScriptObject WordsOf(Words words) => new()
    {
        ["steel"] = words.SteelColumn,
        ["friction"] = words.FrictionColumn,
        ["second_person"] = words.SecondPerson,
        ["facing"] = words.Facing,
        ["bare"] = words.Steel,
        ["calls"] = words.Calls,
        ["hears"] = words.Hears,
        ["strikes"] = words.Strikes,
        ["whole_cell"] = words.TheWholeCell,
        ["left_now"] = words.LeftNow,
        ["not_agreed"] = words.NotAgreed,
        ["lift_out"] = words.LiftOut,
    };
}
