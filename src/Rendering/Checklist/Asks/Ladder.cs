using System.Globalization;
using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Figures;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Checklist.Asks;

/// <summary>The stack as a page to read: left, right, next line. Each cell is struck as its part goes in.</summary>
internal static class Ladder
{
    /// <summary>Height of a line in mm: the drawing beside the cells has the same. <c>--ladder-row</c> in sheet.css.</summary>
    public const double RowHeight = 9.9;

    public static ScriptObject Of(StackAsk ask, SheetStep step, CheckAsk? check, SheetContext context)
    {
        var words = context.Words;
        var rows = Rows(ask.Cells);
        return new ScriptObject
        {
            ["from"] = words.StackEnd(ask.Stack.From?.Value),
            ["figure"] = Section(ask, step, words),
            ["rows"] = new ScriptArray(rows.Select(r => Row(r, words))),
            ["total"] = string.Create(CultureInfo.InvariantCulture, $"{ask.Cells.Length} {words.In}"),
            ["left"] = $"0 {words.Left}",
            ["by"] = Box.By(words),
            ["second"] = Second(ask, step, check, context),
            ["words"] = WordsOf(words),
        }.Showing("sheet-ladder.html");
    }

    /// <summary>The stack in section, to one scale, the end that building starts from at the top.</summary>
    public static RawHtml Section(StackAsk ask, SheetStep step, Words words)
    {
        var to = words.StackEnd(ask.Stack.To?.Value);
        var title = $"{words.SectionOfStack}: {words.StackEnd(ask.Stack.From?.Value)} – {to}";
        return new RawHtml(StackSection.Draw(FigureId.Of("stack", step, ask), Pieces(Rows(ask.Cells), ask.Stack), RowHeight, to, title));
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

    private static ScriptObject Row(List<LadderCell> row, Words words) => new()
    {
        ["outer"] = row.FirstOrDefault(c => c.Outer) is { } o ? Cell(o, words) : null,
        ["inner"] = row.FirstOrDefault(c => !c.Outer) is { } i ? Cell(i, words) : null,
    };

    private static ScriptObject Cell(LadderCell cell, Words words) => new()
    {
        ["label"] = cell.Label,
        ["position"] = cell.Position,
        ["facing"] = cell.FacedTo is null ? "" : words.FacingTo,
        ["end"] = cell.FacedTo is null ? "" : words.StackEnd(cell.FacedTo),
    };

    private static List<IReadOnlyList<StackSection.Piece>> Pieces(List<List<LadderCell>> rows, PartStack stack) =>
    [
        .. rows.Select(r => r.Select(c => new StackSection.Piece(
            c.Label, c.Part.Thickness?.Value.Target.In(UnitTable.Get("mm")).Number, c.Outer,
            c.FacedTo is null ? null : c.FacedTo == stack.From?.Value)).ToList()),
    ];

    // the second person's questions are answered while the answer can still be seen
    private static ScriptObject Second(StackAsk ask, SheetStep step, CheckAsk? check, SheetContext context)
    {
        var faced = ask.Cells.Where(c => c.FacedTo is not null).ToList();
        var call = CallWords.Of(step, context);
        var first = ask.Cells.Length > 0 ? ask.Cells[0].Label : "";
        return new ScriptObject
        {
            ["role"] = check?.Role ?? "",
            ["before"] = new ScriptArray(faced.Take(1).Select(f => $"{f.Label} {context.Words.Shows}")),
            ["after"] = new ScriptArray(faced.Skip(1).Select(f => $"{f.Label} {context.Words.Shows}")),
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
