using System.Globalization;
using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Rendering.Checklist.Asks;

/// <summary>A box is empty and is written in; a cell has its words printed and is struck when they are so.</summary>
internal static class Box
{
    public const string Narrow = "narrow";
    public const string Reading = "reading";
    public const string Clock = "clock";
    public const string Tool = "tool";

    /// <param name="under">A second line of the label: which tool.</param>
    public static ScriptObject Write(string width, string before = "", string after = "", string dot = "", string under = "") =>
        new() { ["strike"] = false, ["width"] = width, ["before"] = before, ["after"] = after, ["dot"] = dot, ["words"] = "", ["under"] = under };

    public static ScriptObject Strike(string words) =>
        new() { ["strike"] = true, ["width"] = "", ["before"] = "", ["after"] = "", ["dot"] = "", ["words"] = words, ["under"] = "" };

    public static ScriptObject By(Words words, string role = "") =>
        Write(Narrow, role.Length == 0 ? words.By : $"{role} {words.By}");

    public static ScriptObject Time(Words words) => Write(Clock, words.Time);

    /// <summary>Where the decimal point is printed: by the decimals that are written, or nowhere.</summary>
    public static string Dot(Quantity? resolution) =>
        resolution is { Decimals: > 0 and <= 4 } r ? "dot" + r.Decimals.ToString(CultureInfo.InvariantCulture) : "";

    public static string Dot(ReadingItem reading) =>
        Dot(reading.Resolution?.Value ?? (reading.Plausible?.Value is { } range ? (range.High ?? range.Low)?.Value : null));
}
