using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Tags;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Checklist.Asks;
using Witnessmark.Rendering.Checklist.InWords;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Tags;

/// <summary>Every tag of a plan as it prints: the key first, then labels, then what is cut small.</summary>
internal static class TagCards
{
    private const string Starts = "engine-start";
    private const string Moves = "travel";
    private const int TurnsInRow = 3;

    public static IEnumerable<Cut> Of(TagPlan tags, SheetContext context) =>
    [
        .. Key(tags, context.Words),
        .. StubBoard.Of(tags.Devices, context),
        .. tags.Drained.Select(d => Oil(d, context)),
        .. tags.Owed.Select(o => Owed(o, context)),
        .. tags.PartBags.Select(b => PartBag(b, context)),
        .. tags.BoltBags.Select(g => BoltBag(g, context)),
        .. tags.Piles.Select(p => PileCards.Of(p, context)),
        .. tags.Devices.Select(d => Device(d, context)),
    ];

    private static IEnumerable<Cut> Key(TagPlan tags, Words words)
    {
        var forbidden = new[] { Starts, Moves }.Where(b => !tags.Blocking(b).IsEmpty).ToList();
        if (forbidden.Count == 0)
            yield break;
        yield return new Cut(
            new ScriptObject
            {
                ["words"] = new ScriptArray(forbidden.Select(words.Forbids)),
                ["where"] = words.OnTheKey,
                ["because"] = $"{words.InTheMachine}: {string.Join(" ", forbidden.SelectMany(b => tags.Blocking(b)).Distinct())}",
                ["until"] = words.TakeOffKey,
                ["boxes"] = new ScriptArray([Box.Write(Box.Narrow, words.HungBy), Box.Write("date", words.Date), Box.Time(words)]),
            }.Showing("tag-key.html"),
            Wide: true);
    }

    private static Cut Device(DeviceStay device, SheetContext context) => new(
        new ScriptObject
        {
            ["tag"] = device.Tag,
            ["kind"] = context.Tongue.Name(device.Kind.Id.Value),
            ["wording"] = context.Tongue.Text(device.Kind.Wording?.Value ?? ""),
            ["forbids"] = new ScriptArray(device.Kind.Blocks.Select(b => context.Words.Forbids(b.Value)).Where(w => w.Length > 0)),
            ["goes_in"] = $"{context.Words.GoesIn} {(device.In is { } at ? $"{context.Words.AtStepNumber} {at}" : context.Words.BeforeStepOne)}",
            ["comes_out"] = StubBoard.ComesOut(device, context.Words),
            ["hung"] = Box.By(context.Words),
            ["out"] = Box.By(context.Words),
        }.Showing("tag-device.html"),
        Wide: false);

    private static Cut Oil(DrainedSpace drained, SheetContext context)
    {
        var (words, space) = (context.Words, drained.Space);
        return new Cut(
            new ScriptObject
            {
                ["word"] = words.UsedOil,
                ["fluid"] = context.Tongue.Name(space.Fluid?.Value ?? space.Id.Value),
                ["from"] = $"{context.Tongue.Name(space.Id.Value)} · {words.AtStepNumber} {drained.Step}",
                ["holds"] = space.Holds is { } holds ? context.Quantities.Of(holds.Value, words.HoldsWhenFull) : null,
                ["container"] = space.DrainsInto is { } into ? string.Join(" · ", new[] { context.Tongue.Name(into.Value), context.Tongue.Text(drained.Container?.Wording?.Value ?? "") }.Where(t => t.Length > 0)) : "",
                ["boxes"] = new ScriptArray([
                    Box.Write(Box.Tool, words.PouredIn, space.Holds?.Value.Unit.Symbol ?? "", Box.Dot(space.Holds?.Value)), Box.Write("date", words.Date), Box.By(words)]),
                ["harms"] = new ScriptArray([words.OilBurns, words.OilScalds, words.OilStays]),
            }.Showing("tag-oil.html"),
            Wide: true);
    }

    private static Cut Owed(DebtValue owed, SheetContext context)
    {
        var words = context.Words;
        return new Cut(
            new ScriptObject
            {
                ["word"] = words.StillOwed,
                ["what"] = Say.Capital(context.Tongue.Text(owed.What.Value)),
                ["where"] = words.OnTheWheel,
                ["now"] = Box.Write(Box.Tool, words.HoursNow),
                ["turns"] = new ScriptArray(owed.After.Select(a => new ScriptObject
                {
                    ["after"] = $"{words.AfterHours} {a.Value}",
                    ["boxes"] = new ScriptArray([Box.Write(Box.Tool, words.DueAt, a.Value.Unit.Symbol), Box.By(words), Box.Write("date", words.Date)]),
                })),
            }.Showing("tag-owed.html"),
            Wide: true,
            Rows: owed.After.Length > TurnsInRow ? 2 : 1);
    }

    private static Cut BoltBag(FastenerGroup group, SheetContext context) => new(
        new ScriptObject
        {
            ["word"] = context.Words.BoltBag,
            ["what"] = context.Tongue.Name(group.Id.Value),
            ["lines"] = new ScriptArray(new[] { Thread(group), StrengthAndState(group, context) }.Where(l => l.Length > 0)),
            ["forbids"] = group.Reuse?.Value == "never" ? context.Words.DoNotFitAgain : "",
            ["boxes"] = new ScriptArray([Box.Write(Box.Narrow, context.Words.InTheBag, group.Count is { } n ? $"{context.Words.OutOf} {n.Value}" : context.Words.Pieces), Box.By(context.Words)]),
        }.Showing("tag-bag.html"),
        Wide: false);

    private static string StrengthAndState(FastenerGroup group, SheetContext context)
    {
        var strength = group.PropertyClass is { } c ? $"{context.Words.PropertyClass} {c.Value}" : group.Grade is { } g ? $"{context.Words.Grade} {g.Value}" : "";
        return string.Join(" · ", new[] { strength, group.Condition is { } d ? context.Tongue.Value(d.Value, group.Id.Value) : "" }.Where(w => w.Length > 0));
    }

    private static string Thread(FastenerGroup group) =>
        $"{group.Count?.Value} × {group.Thread?.Value}{(group.Length is { } l ? $" × {QuantityWords.Both(l.Value)}" : "")}".Trim(' ', '×');

    private static Cut PartBag(PartBag bag, SheetContext context)
    {
        var words = context.Words;
        var readings = bag.Readings.SelectMany(r => Enumerable.Repeat(Box.Write(Box.Tool, dot: Box.Dot(r.Reading)), r.Points));
        return new Cut(
            new ScriptObject
            {
                ["word"] = words.PartBag,
                ["what"] = context.Tongue.Name(bag.Part.Id.Value),
                ["lines"] = new ScriptArray([$"{string.Join(", ", bag.Readings.Select(r => $"{context.Tongue.Name(r.Key)}, {r.Reading.Resolution?.Value.Unit.Symbol}"))} · {words.AtStepNumber} {bag.Step}"]),
                ["forbids"] = "",
                ["boxes"] = new ScriptArray(readings.Append(Box.Write(Box.Narrow, words.InTheBag, words.Pieces)).Append(Box.By(words))),
            }.Showing("tag-bag.html"),
            Wide: bag.Readings.Sum(r => r.Points) > 2);
    }
}
