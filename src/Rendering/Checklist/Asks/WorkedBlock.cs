using System.Text.RegularExpressions;
using Scriban.Runtime;
using Witnessmark.Engineering.Formulas;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Checklist.Asks;

/// <summary>A value worked out on the paper: a box for each number that goes in, signs between them, a box for the result.</summary>
internal static partial class WorkedBlock
{
    private const int MostBoxes = 5;

    public static ScriptObject Of(WorkedAsk ask, SheetContext context)
    {
        var formula = InWords(ask, context);
        var parts = Parts(formula, Box.Dot(ask.Value.Round?.Value)).ToList();
        var boxed = parts.Count(p => (string)p["sign"]! == "") <= MostBoxes;
        return new ScriptObject
        {
            ["name"] = context.Tongue.Name(ask.Key),
            ["formula"] = formula,
            ["parts"] = new ScriptArray(boxed ? parts : []),
            ["dot"] = Box.Dot(ask.Value.Round?.Value),
            ["limits"] = ask.Accept is { } accept ? context.Quantities.Of(accept) : null,
            ["unit"] = ask.Accept is null ? ask.Value.Round?.Value.Unit.Symbol ?? "" : "",
        }.Showing("sheet-worked.html");
    }

    /// <summary>As written where it cannot be read: a rule says so.</summary>
    private static string InWords(WorkedAsk ask, SheetContext context)
    {
        var written = ask.Value.Formula?.Value ?? "";
        return Formula.Parse(written).Value?.InWords(context.Tongue.Name, context.Words.Gathered) ?? written;
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
