using System.Collections.Immutable;
using System.Globalization;
using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist.Asks;
using Witnessmark.Rendering.Checklist.InWords;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Checklist;

/// <summary>Sections one after another, and what closes each.</summary>
internal static class SheetSections
{
    public static ScriptArray Of(SheetContext context) => new ScriptArray(context.Plan.Sections.Select((s, i) => Section(s, i, context)));

    private static ScriptObject Section(SheetSection section, int index, SheetContext context)
    {
        var words = context.Words;
        var last = index == context.Plan.Sections.Length - 1;
        return new ScriptObject
        {
            ["id"] = string.Create(CultureInfo.InvariantCulture, $"section-{index + 1}"),
            ["heading"] = section.Section.Heading?.Value ?? context.Plan.Procedure.Title?.Value ?? "",
            ["who"] = string.Join(" + ", context.UsualDoers(section)),
            ["time"] = context.Quantities.Sum(SheetContext.Durations(section)),
            ["only_if"] = section.Section.Facts.FirstOrDefault(f => f.Word == FactWord.OnlyIf)?.Value is ConditionValue only
                ? $"{words.OnlyIf} {context.Conditions(Fills.None).Of(only.Condition)}" : "",
            ["not_so"] = Box.Strike(words.NotSo),
            ["for_each"] = context.Rounds(section.Section, Fills.None) is { } rounds ? $"{words.ForEach} {rounds}" : "",
            ["still_in"] = StillIn(section.StillIn, context),
            ["prose"] = SheetContext.Blocks(section.Section.Prose, Fills.None),
            ["run"] = StepRun.Of(section, Close(last ? Finish(context) : "", new StopWords(context.Plan, words).In(section), words), context),
        };
    }

    private static ScriptObject? StillIn(ImmutableArray<StillIn> devices, SheetContext context)
    {
        var words = context.Words;
        if (devices.IsEmpty)
            return null;
        var blocks = devices.SelectMany(d => d.Kind.Blocks).Select(b => b.Value).ToHashSet(StringComparer.Ordinal);
        return new ScriptObject
        {
            ["title"] = words.StillIn,
            ["devices"] = new ScriptArray(devices.Select(d => new ScriptObject { ["kind"] = context.Tongue.Name(d.Kind.Id.Value), ["tags"] = string.Join(' ', d.Tags) })),
            ["so"] = string.Join(' ', new[]
            {
                blocks.Contains("engine-start") ? words.DoNotStart : "",
                blocks.Contains("travel") ? words.DoNotMove : "",
            }.Where(t => t.Length > 0)),
        };
    }

    // "signed: stack verified" rather than a "complete" that was printed before the work
    private static string Finish(SheetContext context)
    {
        var number = context.Plan.Sections.SelectMany(s => s.Steps).Select(s => s.Code.Plain).LastOrDefault() ?? "";
        var states = context.Plan.Part.Facts.Where(f => f.Word == FactWord.EndsWith).Select(f => f.Value).OfType<ConditionValue>()
            .SelectMany(c => context.Conditions(Fills.None).Each(c.Condition));
        return $"{number} {context.Words.Signed}: {string.Join(", ", states)}. {context.Words.GoOn}";
    }

    private static ScriptObject Close(string finish, string stops, Words words) => new ScriptObject
    {
        ["stops"] = stops,
        ["finish"] = finish,
        ["done"] = words.SectionDone,
        ["broke_off"] = words.BrokeOff,
        ["restart"] = words.Restart,
        ["by"] = Box.By(words),
        ["time"] = Box.Time(words),
        ["at_step"] = Box.Write(Box.Narrow, words.AtStep),
    }.Showing("sheet-close.html");
}
