using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Comparing;

/// <summary>Steps that came, went, or stand at another place in the order of work.</summary>
internal static class OrderChanges
{
    private static readonly ImmutableArray<FactWord> Asking =
    [
        FactWord.Hold, FactWord.CheckedBy, FactWord.StopIf, FactWord.Requires, FactWord.Count, FactWord.Measure, FactWord.Inspect, FactWord.Test, FactWord.WorkOut,
        FactWord.Place, FactWord.Recover, FactWord.Tighten, FactWord.Snug, FactWord.Loosen, FactWord.Fit, FactWord.Remove, FactWord.Lift, FactWord.Land, FactWord.Drain,
        FactWord.Fill, FactWord.Decide, FactWord.Leaves, FactWord.Perform, FactWord.Call, FactWord.AgainFrom, FactWord.End, FactWord.HandOver,
    ];

    public static IEnumerable<Change> Of(StepMatches steps)
    {
        foreach (var gone in steps.Gone)
            yield return new Change(ClassOf(gone.Step), StepChanges.Where(gone), "step", Says(gone.Step), null) { Sense = Asks(gone.Step) ? Sense.Looser : Sense.Other, OldAt = gone.Step.At, Hazards = Hazards(gone) };
        foreach (var come in steps.Come)
            yield return new Change(ClassOf(come.Step), StepChanges.Where(come), "step", null, Says(come.Step)) { Sense = Asks(come.Step) ? Sense.Tighter : Sense.Other, NewAt = come.Step.At, Hazards = Hazards(come) };
        foreach (var moved in Moved(steps))
            yield return moved;
    }

    /// <summary>Declared hazards of the messages that hold for a step.</summary>
    public static ImmutableArray<string> Hazards(StepInPlace place) =>
        [.. place.MessagesInForce.Select(m => m.Hazard?.Value).OfType<string>().Distinct(StringComparer.Ordinal)];

    private static ChangeClass ClassOf(Step step) => step.Facts.Any(f => Asking.Contains(f.Word)) ? ChangeClass.Hazard : ChangeClass.Method;

    private static bool Asks(Step step) => step.Facts.Any(f => FieldClasses.IsDemand(f.Word));

    // facts included: who reads that a step is gone must see what went with it
    private static string Says(Step step) => string.Join("; ", step.Facts.Select(f => $"{f.Word.Spelled()}: {f.Text.Value}").Prepend(step.NameWithStop));

    /// <summary>What stands outside the longest run of steps that kept their order has moved.</summary>
    private static IEnumerable<Change> Moved(StepMatches steps)
    {
        var kept = LongestRising([.. steps.Matched.Select(m => m.Old.Step.Number)]);
        for (var i = 0; i < steps.Matched.Length; i++)
        {
            if (kept.Contains(i))
                continue;
            var moved = steps.Matched[i];
            var passed = steps.Matched.Where(m => m != moved && (m.Old.Step.Number < moved.Old.Step.Number) != (m.New.Step.Number < moved.New.Step.Number)).ToList();
            var because = Matters(moved.New.Step, passed.Select(p => p.New.Step));
            yield return new Change(because is null ? ChangeClass.Method : ChangeClass.Hazard, StepChanges.Where(moved.New), "order", $"step {moved.Old.Step.Number}", $"step {moved.New.Step.Number}")
            {
                Because = because,
                OldAt = moved.Old.Step.At,
                NewAt = moved.New.Step.At,
                Hazards = Hazards(moved.New),
            };
        }
    }

    /// <summary>Why it matters that a step passes others: they work on one thing, or one of them holds a load, a device or a hold point.</summary>
    private static string? Matters(Step moved, IEnumerable<Step> passed)
    {
        foreach (var other in passed)
        {
            if (Touched(other).Intersect(Touched(moved)).FirstOrDefault() is { } both)
                return $"it passes step {other.Number} {other.Name}, which works on {both} too";
            if ((Gate(moved) ?? Gate(other)) is { } gate)
                return $"it passes step {other.Number} {other.Name}, and one of the two has `{gate.Spelled()}:`";
        }
        return null;
    }

    /// <summary>Loads, devices and hold points: what is safe before them is not what is safe after them.</summary>
    private static FactWord? Gate(Step step) => step.Facts.Select(f => (FactWord?)f.Word).FirstOrDefault(w => w is FactWord.Lift or FactWord.Land or FactWord.Place or FactWord.Recover or FactWord.Hold or FactWord.Perform or FactWord.End);

    /// <summary>What the facts of a step name, whoever does it and with what.</summary>
    private static HashSet<string> Touched(Step step) =>
    [
        .. step.Facts.Where(f => f.Word is not (FactWord.By or FactWord.Zone or FactWord.Tool or FactWord.Tools or FactWord.Was or FactWord.Call)).SelectMany(f => f.Value switch
        {
            Amounts a => a.All.Select(x => x.Thing.Value),
            NameList n => n.Names.Select(x => x.Value),
            Landing l => [l.Load.Value],
            LeftState s => s.States.Select(x => x.Thing.Value),
            PerformValue p => p.Arguments.Select(x => x.Value.Value),
            _ => f.Conditions.SelectMany(c => c.All).OfType<StateClause>().Select(c => c.Thing.Value),
        }),
    ];

    /// <summary>Places of a longest rising run, by patience: n log n.</summary>
    private static HashSet<int> LongestRising(ImmutableArray<int> numbers)
    {
        var ends = new List<int>();
        var before = new int[numbers.Length];
        for (var i = 0; i < numbers.Length; i++)
        {
            var at = ends.FindIndex(e => numbers[e] >= numbers[i]);
            at = at < 0 ? ends.Count : at;
            before[i] = at == 0 ? -1 : ends[at - 1];
            if (at == ends.Count)
                ends.Add(i);
            else
                ends[at] = i;
        }
        var kept = new HashSet<int>();
        for (var i = ends.Count == 0 ? -1 : ends[^1]; i >= 0; i = before[i])
            kept.Add(i);
        return kept;
    }
}
