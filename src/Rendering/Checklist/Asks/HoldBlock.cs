using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Checklist.Asks;

/// <summary>Where work stops, and the second person's line.</summary>
internal static class HoldBlock
{
    public static ScriptObject Of(HoldAsk hold, CheckAsk? check, SheetContext context) => new ScriptObject
    {
        ["title"] = hold.By is { } role ? $"{context.Words.Hold} · {context.Tongue.Name(role)}{(check is null ? "" : ", " + How(check.Mode, context.Words))}" : context.Words.Hold,
        ["parts"] = new ScriptArray(hold.Words.Select((text, i) => Piece(text, i < hold.Blanks))),
        ["by"] = Box.By(context.Words),
        ["time"] = Box.Time(context.Words),
    }.Showing("sheet-hold.html");

    // the last word stays beside its box
    private static ScriptObject Piece(string text, bool blank)
    {
        var cut = blank ? text.TrimEnd().LastIndexOf(' ') + 1 : text.Length;
        return new ScriptObject { ["text"] = text[..cut], ["tail"] = text[cut..], ["blank"] = blank };
    }

    public static ScriptObject Second(CheckAsk check, ScriptObject? own, SheetContext context) => new ScriptObject
    {
        ["title"] = context.Words.SecondPerson,
        ["how"] = $"{context.Tongue.Name(check.Role)}, {How(check.Mode, context.Words)}",
        ["own"] = own,
        ["by"] = Box.By(context.Words),
    }.Showing("sheet-second.html");

    private static string How(CheckMode mode, Words words) => mode == CheckMode.Independent ? words.Alone : words.WhileDone;
}
