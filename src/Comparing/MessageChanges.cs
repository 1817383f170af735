using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Comparing;

/// <summary>Safety messages of a procedure in two versions, and for which steps they hold. One that is gone stands on a line of its own.</summary>
internal static class MessageChanges
{
    public static IEnumerable<Change> Between(Procedure old, Procedure made, StepMatches steps)
    {
        var (before, after) = (Reaches(old), Reaches(made));
        foreach (var (from, to) in Pairs(before, after))
        {
            if (from is null || to is null)
            {
                yield return ComeOrGone(from?.Message, to?.Message);
                continue;
            }
            foreach (var change in Reworded(from.Message, to.Message))
                yield return change;
            foreach (var change in HeldFor(from, to, steps))
                yield return change;
        }
    }

    private static IEnumerable<Change> HeldFor(Reach old, Reach made, StepMatches steps)
    {
        var lost = steps.Matched.Where(m => old.Steps.Contains(m.Old.Step) && !made.Steps.Contains(m.New.Step)).Select(m => m.New.Step.Number).ToList();
        var won = steps.Matched.Where(m => !old.Steps.Contains(m.Old.Step) && made.Steps.Contains(m.New.Step)).Select(m => m.New.Step.Number).ToList();
        var holds = new Change(ChangeClass.Hazard, Where(made.Message), "holds for", null, null) { Hazards = Hazards(made.Message), OldAt = old.Message.At, NewAt = made.Message.At };
        if (lost.Count > 0)
            yield return holds with { Old = $"step {string.Join(", ", lost)} too", New = "no longer", Sense = Sense.Looser };
        if (won.Count > 0)
            yield return holds with { Old = "not yet", New = $"step {string.Join(", ", won)} too", Sense = Sense.Tighter };
    }

    /// <summary>Those of one place in a translation, in their order.</summary>
    public static IEnumerable<Change> InTranslation(string place, ImmutableArray<SafetyMessage> old, ImmutableArray<SafetyMessage> made)
    {
        for (var i = 0; i < Math.Max(old.Length, made.Length); i++)
            foreach (var change in i >= old.Length ? [ComeOrGone(null, made[i])] : i >= made.Length ? [ComeOrGone(old[i], null)] : Reworded(old[i], made[i]))
                yield return change with { Where = $"{place}, {change.Where}" };
    }

    private sealed record Reach(SafetyMessage Message, HashSet<Step> Steps);

    private static List<Reach> Reaches(Procedure procedure)
    {
        var reaches = new List<Reach>();
        foreach (var place in procedure.Walk())
            foreach (var message in place.MessagesInForce)
            {
                var reach = reaches.FirstOrDefault(r => ReferenceEquals(r.Message, message));
                if (reach is null)
                    reaches.Add(reach = new Reach(message, new HashSet<Step>(ReferenceEqualityComparer.Instance)));
                reach.Steps.Add(place.Step);
            }
        return reaches;
    }

    /// <summary>The same message first, then the same hazard and danger, then the same hazard.</summary>
    private static IEnumerable<(Reach? Old, Reach? New)> Pairs(List<Reach> old, List<Reach> made)
    {
        var (before, after) = (old.ToList(), made.ToList());
        var pairs = new List<(Reach? Old, Reach? New)>();
        Func<SafetyMessage, string>[] keys = [Meaning.Of, m => $"{m.Hazard?.Value}: {m.Nature.Value}", m => m.Nature.Value, m => m.Hazard?.Value ?? m.Nature.Value];
        foreach (var key in keys)
            foreach (var from in before.ToList())
                if (after.FirstOrDefault(a => key(a.Message) == key(from.Message)) is { } to)
                {
                    pairs.Add((from, to));
                    before.Remove(from);
                    after.Remove(to);
                }
        return [.. pairs, .. before.Select(b => ((Reach?)b, (Reach?)null)), .. after.Select(a => ((Reach?)null, (Reach?)a))];
    }

    private static Change ComeOrGone(SafetyMessage? old, SafetyMessage? made)
    {
        var message = (made ?? old)!;
        return new Change(ChangeClass.Hazard, Where(message), "message", old is null ? null : Says(message), made is null ? null : Says(message))
        {
            Sense = made is null ? Sense.Looser : Sense.Tighter, Hazards = Hazards(message), OldAt = old?.At, NewAt = made?.At,
        };
    }

    private static IEnumerable<Change> Reworded(SafetyMessage old, SafetyMessage made)
    {
        var where = Where(made);
        if (old.Word.Value != made.Word.Value)
            yield return At(new Change(ChangeClass.Hazard, where, "signal word", old.Word.Value, made.Word.Value)
            {
                Sense = old.Signal is { } from && made.Signal is { } to ? from > to ? Sense.Looser : from < to ? Sense.Tighter : Sense.Other : Sense.Other,
            });
        if (old.Nature.Value != made.Nature.Value)
            yield return At(Words(where, "danger", old.Nature.Value, made.Nature.Value));
        if (Meaning.Of(old.Rest) != Meaning.Of(made.Rest))
            yield return At(Words(where, "consequence", old.Rest.Plain(), made.Rest.Plain()));
        if (old.Hazard?.Value != made.Hazard?.Value)
            yield return At(new Change(ChangeClass.Hazard, where, "hazard", old.Hazard?.Value, made.Hazard?.Value));
        foreach (var change in Avoidance(where, old, made))
            yield return At(change);

        Change At(Change change) => change with { Hazards = [.. Hazards(old).Union(Hazards(made))], OldAt = old.At, NewAt = made.At };
    }

    /// <summary>How it is avoided, line by line: a line that is gone is looser.</summary>
    private static IEnumerable<Change> Avoidance(string where, SafetyMessage old, SafetyMessage made)
    {
        var (before, after) = (old.Avoid.Select(b => b.Plain()).ToList(), made.Avoid.Select(b => b.Plain()).ToList());
        foreach (var same in before.Intersect(after, StringComparer.Ordinal).ToList())
        {
            before.Remove(same);
            after.Remove(same);
        }
        for (var i = 0; i < Math.Max(before.Count, after.Count); i++)
            yield return (before.ElementAtOrDefault(i), after.ElementAtOrDefault(i)) switch
            {
                ({ } from, { } to) => Words(where, "avoided by", from, to),
                ({ } from, _) => new Change(ChangeClass.Hazard, where, "avoided by", from, null) { Sense = Sense.Looser },
                (_, var to) => new Change(ChangeClass.Hazard, where, "avoided by", null, to) { Sense = Sense.Tighter },
            };
    }

    /// <summary>What a message says keeps people from harm: only another spelling of it is wording.</summary>
    private static Change Words(string where, string what, string old, string made)
    {
        var change = StepChanges.Text(where, what, old, made);
        return change.Class == ChangeClass.Hazard || TellingWords.OnlyRespelled(old, made)
            ? change
            : change with { Class = ChangeClass.Hazard, Because = "a message says it otherwise: whether it still warns as much, a reader has to judge" };
    }

    private static string Where(SafetyMessage message) => $"{message.Word}: {message.Nature}";

    private static string Says(SafetyMessage message) => $"{message.Word}: {message.Nature} {message.Rest.Plain()}".Trim();

    private static ImmutableArray<string> Hazards(SafetyMessage message) => message.Hazard is { } hazard ? [hazard.Value] : [];
}
