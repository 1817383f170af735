using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Checklist.Asks;

/// <summary>Where work stops, and the second person's line.</summary>
internal static class HoldBlock
{
    public static ScriptObject Of(HoldAsk hold, CheckAsk? check, Words words) => new ScriptObject
    {
        ["title"] = hold.By is { } role ? $"{words.Hold} · {role}{(check is null ? "" : ", " + How(check.Mode, words))}" : words.Hold,
        ["parts"] = new ScriptArray(hold.Words.Select((text, i) => Piece(text, i < hold.Blanks))),
        ["by"] = Box.By(words),
        ["time"] = Box.Time(words),
    }.Showing("sheet-hold.html");

    // the last word stays beside its box
    private static ScriptObject Piece(string text, bool blank)
    {
        var cut = blank ? text.TrimEnd().LastIndexOf(' ') + 1 : text.Length;
        return new ScriptObject { ["text"] = text[..cut], ["tail"] = text[cut..], ["blank"] = blank };
    }

    public static ScriptObject Second(CheckAsk check, ScriptObject? own, Words words) => new ScriptObject
    {
        ["title"] = words.SecondPerson,
        ["how"] = $"{check.Role}, {How(check.Mode, words)}",
        ["own"] = own,
        ["by"] = Box.By(words),
    }.Showing("sheet-second.html");

    private static string How(CheckMode mode, Words words) => mode == CheckMode.Independent ? words.Alone : words.WhileDone;
}
