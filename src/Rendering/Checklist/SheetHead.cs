using System.Globalization;
using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist.Asks;

namespace Witnessmark.Rendering.Checklist;

/// <summary>The first page's head: for which machine, who, with what, how long, and what must be so before the first step.</summary>
internal static class SheetHead
{
    public static ScriptObject Of(SheetContext context)
    {
        var procedure = context.Plan.Procedure;
        var words = context.Words;
        return new ScriptObject
        {
            ["title"] = procedure.Title?.Value ?? procedure.Id.Value,
            ["part_name"] = context.Plan.Part.Name is { } name ? context.Tongue.Name(name.Value) : "",
            ["time"] = context.Quantities.Sum([.. context.Plan.Sections.SelectMany(s => SheetContext.Durations(s))]),
            ["rows"] = new ScriptArray(Rows(context)),
            ["intro"] = SheetContext.Blocks([.. procedure.Introduction, .. context.Plan.Part.Prose], Fills.None),
            ["boxes"] = new ScriptArray(Boxes(context)),
            ["before"] = Before(context),
            ["how"] = words.HowToFill,
            ["see"] = words.SeeAndStrike,
            ["conditions"] = new ScriptArray(Conditions(context)),
            ["notice"] = context.Tongue.Text(context.Scope.Library.Workshop.Notice?.Value ?? ""),
        };
    }

    private static IEnumerable<ScriptObject> Rows(SheetContext context)
    {
        var words = context.Words;
        var procedure = context.Plan.Procedure;
        yield return Row(words.For, AppliesTo(context));
        var machine = Machine(context);
        if (machine.Length > 0)
            yield return Row(words.This, machine, half: true);
        yield return Row(words.Crew, string.Join(", ", procedure.Crew.Select(c => string.Create(CultureInfo.InvariantCulture, $"{c.Number.Value} {context.Tongue.Name(c.Role.Value)}"))), half: machine.Length > 0);
        yield return Row(words.Tools, string.Join(" · ", Tools(context)));
    }

    private static string Machine(SheetContext context)
    {
        var (id, words) = (context.Identity, context.Words);
        return string.Join(" · ", new[]
        {
            id.Unit is { } unit ? $"{words.Unit} {unit}" : "",
            id.Serial is { } serial ? $"{words.Serial} {serial}" : "",
            id.Place is { } place ? $"{words.Place} {place}" : "",
        }.Where(t => t.Length > 0));
    }

    private static string AppliesTo(SheetContext context)
    {
        var words = context.Words;
        var applies = context.Plan.Procedure.AppliesTo?.Value;
        var parts = new List<string> { context.Tongue.Text(context.Scope.Machine?.Title?.Value ?? context.Scope.Machine?.Id.Value ?? "") };
        if (applies?.Serials is { } serials)
            parts.Add($"{words.FromSerial} {serials.Value.From}{(serials.Value.To is { } to ? $" {words.To} {to}" : "")}");
        if (applies is { Positions.IsEmpty: false })
            parts.Add(string.Join($" {words.Or} ", applies.Positions.Select(p => p.Value)));
        return string.Join(" · ", parts.Where(p => p.Length > 0));
    }

    // every tool that a step names, in the order of use
    private static IEnumerable<string> Tools(SheetContext context) =>
        context.Plan.Steps
            .SelectMany(s => s.Asks.OfType<ToolAsk>().SelectMany(t => t.Tools).Concat(Named(s)))
            .Distinct(StringComparer.Ordinal)
            .Select(name => Tool(name, context));

    private static IEnumerable<string> Named(SheetStep step) =>
        step.Place.Effective(FactWord.Tools)?.Value is NameList tools ? tools.Names.Select(n => step.Fills.In(n.Value)) : [];

    private static string Tool(string name, SheetContext context) => context.Scope.Tool(name) switch
    {
        Wrench { Range: { } range } => $"{context.Tongue.Name(name)} ({context.Quantities.Text(range.Value)})",
        Gauge { Range: { } range } => $"{context.Tongue.Name(name)} ({context.Quantities.Text(range.Value)})",
        LiftingGear { Rated: { } rated } => $"{context.Tongue.Name(name)} ({rated.Value})",
        _ => context.Tongue.Name(name),
    };

    // what the print does not know is written by hand
    private static IEnumerable<ScriptObject> Boxes(SheetContext context)
    {
        var words = context.Words;
        yield return Box.Write("date", words.Date);
        if (context.Identity.Unit is null)
            yield return Box.Write(Box.Narrow, words.Unit);
        if (context.Identity.Serial is null)
            yield return Box.Write(Box.Tool, words.Serial);
        if (context.Identity.Place is null)
            yield return Box.Write(Box.Narrow, words.Place);
        yield return Box.Write(Box.Tool, words.MachineHours);
        foreach (var (role, number) in context.Plan.Procedure.Crew)
            for (var i = 0; i < number.Value; i++)
                yield return Box.Write(Box.Narrow, context.Tongue.Name(role.Value));
    }

    private static string Before(SheetContext context)
    {
        var first = context.Plan.Sections.SelectMany(s => s.Steps).Select(s => s.Code.Plain).FirstOrDefault() ?? "1";
        return $"{context.Words.Before} {first}";
    }

    private static IEnumerable<string> Conditions(SheetContext context) =>
        context.Plan.Part.Facts.Where(f => f.Word == FactWord.StartsWith).Select(f => f.Value).OfType<ConditionValue>()
            .SelectMany(c => context.Conditions(Fills.None).Each(c.Condition)).Distinct(StringComparer.Ordinal);

    private static ScriptObject Row(string key, string text, bool half = false) =>
        new() { ["key"] = key, ["text"] = text, ["half"] = half };
}
