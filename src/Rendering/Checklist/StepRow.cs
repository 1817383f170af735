using System.Collections.Immutable;
using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist.Asks;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Checklist;

/// <summary>One step as a row: code, words, boxes; below it what needs the whole width.</summary>
internal static class StepRow
{
    public static ScriptObject Of(SheetStep step, ImmutableArray<string> usualDoers, SheetContext context)
    {
        var boxes = SmallBoxes(step, context).ToList();
        var blocks = Blocks(step, context).ToList();
        var leads = step.Step.Find(FactWord.Perform) is not null;
        if (boxes.Count + blocks.Count == 0 && !leads)
            boxes.AddRange(step.Turns is { } turns ? turns.Names.Select(Box.Strike) : [Box.Strike(context.Words.Done)]);
        if (step.Guard is not null && !SaidAtHeading(step))
            boxes.Add(Box.Strike(context.Words.NotSo));
        return new ScriptObject
        {
            ["id"] = "step-" + step.Code.Plain.Replace('.', '-'),
            ["number"] = step.Code.Plain,
            ["check"] = step.Code.CheckDigit,
            ["who"] = Who(step, usualDoers, context.Tongue),
            ["name"] = step.Fills.In(step.Step.NameWithStop),
            ["text"] = SheetContext.Text(step.Step.Text, step.Fills),
            ["remarks"] = new ScriptArray(step.Step.Remarks.Select(r => SheetContext.Text(r, step.Fills))),
            ["prose"] = SheetContext.Blocks(step.Step.Blocks, step.Fills),
            ["before"] = new ScriptArray(StepLines.Before(step, context)),
            ["after"] = new ScriptArray(StepLines.After(step, context)),
            ["boxes"] = new ScriptArray(boxes),
            ["blocks"] = new ScriptArray(blocks),
            ["ends"] = new ScriptArray(Ends(step, context)),
            ["leads"] = leads,
        }.Showing("sheet-step.html");
    }

    /// <summary>A condition of the whole section stands once, under its heading; a common part's headings are not printed.</summary>
    public static bool SaidAtHeading(SheetStep step) =>
        step.Within is null && step.Step.Find(FactWord.OnlyIf) is null && step.Place.Section.Facts.Find(FactWord.OnlyIf) is not null;

    private static IEnumerable<ScriptObject> SmallBoxes(SheetStep step, SheetContext context)
    {
        foreach (var tag in step.Step.Facts.Where(f => f.Word is FactWord.Place or FactWord.Recover).SelectMany(f => Tags(f, step, context)).Distinct(StringComparer.Ordinal))
            yield return Box.Strike(tag);
        foreach (var box in step.Asks.SelectMany(a => SmallAsks.Of(a, context)))
            yield return box;
    }

    private static IEnumerable<ScriptObject> Blocks(SheetStep step, SheetContext context)
    {
        var several = step.Asks.OfType<ReadingAsk>().Count() > 1;
        foreach (var ask in step.Asks)
            switch (ask)
            {
                case ReadingAsk reading:
                    yield return ReadingGrid.Of(reading, several, context);
                    break;
                case WorkedAsk worked:
                    yield return WorkedBlock.Of(worked, context);
                    break;
                case StackAsk stack:
                    foreach (var ladder in Ladder.Of(stack, step, Check(step), context))
                        yield return ladder;
                    break;
                case PassAsk pass:
                    yield return PassBlock.Of(pass, step, context);
                    break;
                case SettingAsk setting:
                    yield return new ScriptObject { ["dial"] = context.Quantities.Of(setting.Dial, context.Words.Dial), ["worked"] = setting.Worked }.Showing("sheet-setting.html");
                    break;
            }
    }

    // the ladder has the second person's own column; a hold that he passes is his line
    private static IEnumerable<ScriptObject> Ends(SheetStep step, SheetContext context)
    {
        var check = Check(step);
        var hold = step.Asks.OfType<HoldAsk>().FirstOrDefault();
        if (hold is not null)
            yield return HoldBlock.Of(hold, check?.Role == hold.By ? check : null, context);
        if (check is not null && hold?.By != check.Role && !step.Asks.OfType<StackAsk>().Any())
            yield return HoldBlock.Second(check, OwnResult(step, check, context.Words), context);
    }

    // who checks a worked value works it out alone and must come to the same
    private static ScriptObject? OwnResult(SheetStep step, CheckAsk check, Words words) =>
        check.Mode == CheckMode.Independent && step.Asks.OfType<WorkedAsk>().FirstOrDefault() is { } worked
            ? Box.Write(Box.Reading, words.OwnResult, words.MustAgree, Box.Dot(worked.Value.Round?.Value))
            : null;

    private static CheckAsk? Check(SheetStep step) => step.Asks.OfType<CheckAsk>().FirstOrDefault();

    private static IEnumerable<string> Tags(Fact fact, SheetStep step, SheetContext context) =>
        fact.Value is Amounts amounts ? amounts.All.SelectMany(a => Tags(a, amounts.All.Length > 1, step, context)) : [];

    // in a loop one goes in at each turn, whichever comes to hand: what is struck is where
    private static IEnumerable<string> Tags(Amount amount, bool several, SheetStep step, SheetContext context)
    {
        var name = step.Fills.In(amount.Thing.Value);
        if (context.ScopeOf(step).Device(name) is not { } kind || kind.Id.Value != name)
            return [name];
        return amount is { Count: not null, AtPlace.Value: "each" } && step.Turns is { } turns
            ? turns.Names.Select(t => several ? $"{context.Tongue.Name(name)} {t}" : t)
            : kind.Tags.Select(t => t.Value);
    }

    private static string Who(SheetStep step, ImmutableArray<string> usual, Tongue tongue)
    {
        var doers = step.Place.Doers.Select(tongue.Name).ToImmutableArray();
        return doers.IsEmpty || doers.SequenceEqual(usual) ? "" : string.Join(" + ", doers);
    }
}
