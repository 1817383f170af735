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
        ["parts"] = Data.List(hold.Words.Select((text, i) => new ScriptObject { ["text"] = text, ["blank"] = i < hold.Blanks })),
        ["by"] = Box.By(words),
        ["time"] = Box.Time(words),
    }.Showing("sheet-hold.html");

    public static ScriptObject Second(CheckAsk check, ScriptObject? own, Words words) => new ScriptObject
    {
        ["title"] = words.SecondPerson,
        ["how"] = $"{check.Role}, {How(check.Mode, words)}",
        ["own"] = own,
        ["by"] = Box.By(words),
    }.Showing("sheet-second.html");

    private static string How(CheckMode mode, Words words) => mode == CheckMode.Independent ? words.Alone : words.WhileDone;
}
