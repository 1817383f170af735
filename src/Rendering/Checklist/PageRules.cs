using System.Globalization;
using System.Text;
using Witnessmark.Engineering.Printing;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Hashing;
using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Checklist;

/// <summary>
/// What stands in the page margins: set mark and page at the top, identity, help and the standing notice at the foot of
/// every page (a clip covers the top). Page margins take style only, so these texts travel as CSS strings.
/// </summary>
internal static class PageRules
{
    // as a browser may measure a hair more
    private const double Slack = 0.99;

    /// <param name="kind">What is printed, and how wide its left margin is.</param>
    /// <param name="code">The square code that is the same on every page; false leaves its place empty for the press.</param>
    public static string Of(SheetContext context, Paper paper, PrintKind kind, bool code)
    {
        var foot = Foot(context).ToList();
        var height = FootHeight(context, kind);
        var words = context.Words;
        var counter = $"{Quote(kind.Says + " ")} counter(page) {Quote($" {words.OutOf} ")} counter(pages)";
        var mark = Quote(context.Identity.SetMark ?? words.Specimen) + (context.Identity.SetMark is null ? ";font-size:var(--top-text);line-height:var(--top-text);padding-bottom:1.5mm" : "");
        return string.Join('\n',
            string.Create(CultureInfo.InvariantCulture, $"@page{{size:{(paper == Paper.A4 ? "A4" : "letter")};margin-bottom:{height:0.#}mm;margin-left:{kind.Clamp.Millimetres:0.#}mm;"),
            $"@top-left{{content:{Quote(Top(context))}}}",
            // on a narrow page the two meet
            $"@top-center{{content:{(kind.Narrower > 0 ? Quote("\u2002· ") + " " : "")}{counter}}}",
            $"@top-right{{content:{mark}}}",
            $"@bottom-left{{content:{Quote(Identity(context) + " · ")} {counter} {Quote(Printed(context) + "\n" + string.Join('\n', foot))}}}",
            $"@bottom-right{{content:{(code ? $"url(\"data:image/svg+xml,{Uri.EscapeDataString(Code(context, kind))}\")" : "\"\"")}}}}}{CodeWidth(context, kind)}");
    }

    /// <summary>Where the code stands, from the lower right corner of the paper.</summary>
    public static FootCode CodePlace(SheetContext context, PrintKind kind)
    {
        var size = SizeOfCode(context, kind);
        return new FootCode(context.Identity.CodeText, kind.Letter, SheetMeasures.Right.Millimetres, FootHeight(context, kind) - SheetMeasures.FootPad.Millimetres - size, size);
    }

    private static double FootHeight(SheetContext context, PrintKind kind)
    {
        var says = Foot(context).Prepend($"{Identity(context)} · {kind.Says} 99 {context.Words.OutOf} 99{Printed(context)}");
        var lines = says.Sum(l => SansBold.Lines(l, SheetMeasures.Floor, TextWidth(context, kind) * Slack));
        return Math.Max(
            SizeOfCode(context, kind) + SheetMeasures.SquareCodeQuiet.Millimetres,
            (lines * SheetMeasures.FootLine.Millimetres) + SheetMeasures.FootSpace.Millimetres);
    }

    private static double TextWidth(SheetContext context, PrintKind kind) => SheetMeasures.FootText.Millimetres - MoreCode(context, kind) - kind.Narrower;

    private static double MoreCode(SheetContext context, PrintKind kind) => SizeOfCode(context, kind) - SheetMeasures.SquareCode.Millimetres;

    // a long name makes more modules; none may become too small to photocopy
    private static double SizeOfCode(SheetContext context, PrintKind kind) =>
        Math.Max(SheetMeasures.SquareCode.Millimetres, Qr.Modules(FootCode.Longest(context.Identity.CodeText, kind.Letter)).Length * SheetMeasures.Module.Millimetres);

    private static string CodeWidth(SheetContext context, PrintKind kind)
    {
        var more = MoreCode(context, kind);
        return more <= 0 && kind.Narrower <= 0
            ? ""
            : string.Create(CultureInfo.InvariantCulture,
                $"@page{{@bottom-right{{width:{SheetMeasures.CodePlace.Millimetres + more:0.#}mm}}@bottom-left{{width:{TextWidth(context, kind):0.#}mm}}}}");
    }

    /// <summary><c>WB-40 2.1.0 · 3F9A C21B 77DE · copy K7M</c></summary>
    public static string Identity(SheetContext context)
    {
        var id = context.Identity;
        var copy = id.SetMark is { } mark ? $"{context.Words.Copy} {mark}" : $"{context.Words.Specimen}, {context.Words.NotIssued}";
        return $"{id.Procedure} {id.Version} · {ShortHash.Of(id.Hash)} · {copy}";
    }

    /// <summary><c>WB-40 · unit 14 CL</c></summary>
    public static string Top(SheetContext context)
    {
        var id = context.Identity;
        var unit = id.Unit is { } u ? $" · {context.Words.Unit} {u}" : "";
        return $"{id.Procedure}{unit}{(id.Place is { } place ? " " + place : "")}";
    }

    public static IEnumerable<string> Foot(SheetContext context)
    {
        var words = context.Words;
        if (context.Scope.Library.Workshop.Help is { } help)
            yield return $"{words.Help}: {context.Tongue.Text(help.Value)}";
        yield return words.StandingNotice;
        yield return $"{words.SheetsDisagree} {Say.Capital(Forms(context))}";
    }

    /// <summary>With what it was made: <c>forms 1A2B 3C4D 5E6F · words 6A89 FCB9 9BC8</c></summary>
    public static string Forms(SheetContext context) =>
        $"{context.Words.Forms} {ShortHash.Of(context.Identity.TemplateHash)}{(Wording(context) is { Length: > 0 } wording ? " · " + wording : "")}";

    /// <summary>Behind the page, where there is room for it: <c> · printed 2031-06-11 06:40</c>; nothing on a specimen.</summary>
    public static string Printed(SheetContext context) => context.Identity.PrintedAt is { Length: > 0 } at ? $" · {context.Words.Printed} {at}" : "";

    /// <summary>Who signs a translated print has read these words; empty in the procedure's own language. Its language anybody sees.</summary>
    public static string Wording(SheetContext context) =>
        context.Identity.WordsHash is { } hash ? $"{context.Words.Wording} {ShortHash.Of(hash)}".Replace(' ', '\u00A0') : "";

    public static string Code(SheetContext context, PrintKind kind) => Qr.Draw("code", $"{context.Identity.CodeText} {kind.Letter}".TrimEnd(), SizeOfCode(context, kind));

    /// <summary>A CSS string that cannot end early: everything but letters and digits is written as its number.</summary>
    public static string Quote(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var rune in text.EnumerateRunes())
            if (rune.IsAscii && Rune.IsLetterOrDigit(rune))
                quoted.Append(rune);
            else
                quoted.Append(CultureInfo.InvariantCulture, $"\\{rune.Value:x6}");
        return quoted.Append('"').ToString();
    }
}
