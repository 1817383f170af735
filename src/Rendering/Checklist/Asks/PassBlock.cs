using System.Collections.Immutable;
using System.Globalization;
using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist.InWords;
using Witnessmark.Rendering.Figures;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Checklist.Asks;

/// <summary>The bolt circle and, pass by pass, what to dial and which bolt comes next.</summary>
internal static class PassBlock
{
    private const int BesideCircle = 12;

    public static ScriptObject Of(PassAsk ask, SheetStep step, SheetContext context)
    {
        var words = context.Words;
        var bolts = ask.Sequence.Length;
        return new ScriptObject
        {
            ["circle"] = Circle(ask, step, context.Tongue, words, passes: 0),
            ["clockwise"] = words.BoltCircle,
            ["ink"] = words.InkEach,
            ["wide"] = bolts > BesideCircle,
            ["group"] = string.Join(" · ", Group(ask, context)),
            ["adapter"] = ask.Adapter is { } adapter ? $"{words.Adapter} {context.Tongue.Name(adapter.Id.Value)}" : "",
            ["torque"] = ask.Group.Torque is { } torque ? context.Quantities.Of(torque.Value, words.TightenTo) : null,
            ["passes"] = new ScriptArray(ask.Settings.Select(s => Pass(s, ask, context))),
        }.Showing("sheet-passes.html");
    }

    /// <param name="passes">To ink beside the bolts; none where they are inked in rows of their own.</param>
    public static RawHtml Circle(PassAsk ask, SheetStep step, Tongue tongue, Words words, int passes) =>
        new(BoltCircle.Draw(FigureId.Of("bolts", step, ask), Ring(ask.Group, ask.Sequence.Length, passes, tongue), words));

    public static BoltedRing Ring(FastenerGroup group, int count, int passes, Tongue tongue) =>
        new(count, group.PitchCircle?.Value, group.AcrossFlats?.Value, passes, Inside(group, count, tongue));

    private static ScriptObject Pass(PassSetting setting, PassAsk ask, SheetContext context) => new()
    {
        ["name"] = string.Create(CultureInfo.InvariantCulture, $"{context.Words.Pass} {setting.Number}"),
        ["how"] = setting.Circular ? context.Words.RoundTheCircle : context.Words.Across,
        ["dial"] = context.Quantities.Of(setting.Dial),
        ["gets"] = setting.AtBolt == setting.Dial ? "" : $"{context.Words.BoltGets} {QuantityWords.Both(setting.AtBolt)}",
        ["bolts"] = new ScriptArray((setting.Circular ? [.. ask.Sequence.Order()] : ask.Sequence)),
    };

    private static ImmutableArray<string> Inside(FastenerGroup group, int count, Tongue tongue) =>
    [
        string.Create(CultureInfo.InvariantCulture, $"{count} × {group.Thread?.Value.ToString() ?? ""}").TrimEnd(' ', '×'),
        .. group.FitsOneWay is { } way ? new[] { tongue.Text(way.Value) } : [],
    ];

    private static IEnumerable<string> Group(PassAsk ask, SheetContext context)
    {
        yield return context.Tongue.Name(ask.Group.Id.Value);
        var length = ask.Group.Length is { } l ? $" × {l.Value}" : "";
        if (ask.Group.Thread is { } thread)
            yield return string.Create(CultureInfo.InvariantCulture, $"{ask.Sequence.Length} × {thread.Value}{length}");
        if (ask.Group.PropertyClass is { } propertyClass)
            yield return $"{context.Words.PropertyClass} {propertyClass.Value}";
        if (ask.Group.Grade is { } grade)
            yield return $"{context.Words.Grade} {grade.Value}";
        if (ask.Group.Condition is { } condition)
            yield return context.Tongue.Value(condition.Value, ask.Group.Id.Value);
        if (ask.Wrench is { } wrench)
            yield return context.Tongue.Name(wrench.Id.Value);
    }
}
