using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving;

/// <summary>Where the work ended before its last step. What is done in a performed part ends that part alone; any other ending ends all.</summary>
internal static class Endings
{
    /// <summary>The first step at which all of it ended; null when it went through.</summary>
    public static HeldEntry? OfAll(Held held) => Struck(held).Where(e => !Ending(e.Asked.Step)!.EndsPart).MinBy(e => held.Asked.IndexOf(e.Asked));

    /// <summary>Whether a step lies behind an ending that was struck.</summary>
    public static bool IsPast(Held held, SheetEntry asked)
    {
        var struck = Struck(held).ToList();
        if (struck.Count == 0)
            return false;
        var steps = held.Plan!.Steps.ToList();
        return struck.Any(e => IsPast(steps, steps.IndexOf(e.Asked.Step), steps.IndexOf(asked.Step)));
    }

    private static bool IsPast(List<SheetStep> steps, int end, int asked)
    {
        if (asked <= end)
            return false;
        var (ended, part) = (steps[end], Ending(steps[end])!.EndsPart);
        if (ended.Within is null)
            return steps[asked].Code.Number > ended.Code.Number;
        var around = steps.TakeWhile(s => !ReferenceEquals(s.Within, ended.Within)).Where(s => s.Code.Number == ended.Code.Number).Select(s => s.Within).ToHashSet();
        // what the ending step performs itself is still done; behind its part others go on
        var own = true;
        foreach (var step in steps.Skip(end + 1).Take(asked - end))
        {
            if (step.Code.Number != ended.Code.Number || around.Contains(step.Within))
                return !part;
            own &= !ReferenceEquals(step.Within, ended.Within);
        }
        return !own;
    }

    private static IEnumerable<HeldEntry> Struck(Held held) =>
        held.Entries.Where(e => Ending(e.Asked.Step) is { } end && !e.NotDone && !Typed.IsEmpty(e.Entry.Find(end.Key)));

    private static ChoiceAsk? Ending(SheetStep step) => step.Asks.OfType<ChoiceAsk>().FirstOrDefault(a => a.Ends);
}
