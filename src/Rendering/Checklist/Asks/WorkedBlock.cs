using System.Text.RegularExpressions;
using Scriban.Runtime;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Checklist.Asks;

/// <summary>A value worked out on the paper: a box for each number that goes in, signs between them, a box for the result.</summary>
internal static partial class WorkedBlock
{
    private const int MostBoxes = 5;

    public static ScriptObject Of(WorkedAsk ask, SheetContext context)
    {
        var parts = Parts(ask.Formula, Box.Dot(ask.Value.Round?.Value)).ToList();
        var boxed = parts.Count(p => (string)p["sign"]! == "") <= MostBoxes;
        return new ScriptObject
        {
            ["name"] = DeclaredName.Spoken(ask.Key),
            ["formula"] = ask.Formula,
            ["parts"] = new ScriptArray(boxed ? parts : []),
            ["dot"] = Box.Dot(ask.Value.Round?.Value),
            ["limits"] = ask.Accept is { } accept ? context.Quantities.Of(accept) : null,
            ["unit"] = ask.Accept is null ? ask.Value.Round?.Value.Unit.Symbol ?? "" : "",
        }.Showing("sheet-worked.html");
    }

    private static IEnumerable<ScriptObject> Parts(string formula, string dot) =>
        SignOrBracket().Split(formula)
            .Select(p => p.Trim())
            .Where(p => p.Length > 0)
            // a number of the formula is no box
            .Select(p => char.IsAsciiDigit(p[0]) || p is "−" or "+" or "×" or "÷" or "/" or "(" or ")"
                ? new ScriptObject { ["sign"] = p, ["words"] = "", ["dot"] = "" }
                : new ScriptObject { ["sign"] = "", ["words"] = p, ["dot"] = dot });

    [GeneratedRegex(@"\s([−+×÷/])\s|([()])")]
    private static partial Regex SignOrBracket();
}
