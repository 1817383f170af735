using System.Collections.Immutable;
using System.Globalization;
using Witnessmark.Language.Model;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Comparing;

/// <summary>Facts of one place in two versions, word by word: what is the same is left out, the rest is paired in its order.</summary>
internal static class FactChanges
{
    public static IEnumerable<Change> Between(string where, ImmutableArray<Fact> old, ImmutableArray<Fact> made)
    {
        foreach (var word in old.Concat(made).Select(f => f.Word).Distinct())
        {
            var before = old.Where(f => f.Word == word).ToList();
            var after = made.Where(f => f.Word == word).ToList();
            foreach (var same in before.Where(b => after.Any(a => Meaning.Of(a) == Meaning.Of(b))).ToList())
            {
                before.Remove(same);
                after.Remove(after.First(a => Meaning.Of(a) == Meaning.Of(same)));
            }
            for (var i = 0; i < Math.Max(before.Count, after.Count); i++)
                foreach (var change in Of(where, word, before.ElementAtOrDefault(i), after.ElementAtOrDefault(i)))
                    yield return change;
        }
    }

    private static IEnumerable<Change> Of(string where, FactWord word, Fact? old, Fact? made)
    {
        if (old?.Value is Amounts before && made?.Value is Amounts after)
            return Of(where, word, before, after, old, made);
        var change = Whole(where, word, old, made);
        return [Sharpened(change, old?.Value, made?.Value)];
    }

    private static Change Whole(string where, FactWord word, Fact? old, Fact? made) =>
        new(FieldClasses.Of(word), where, word.Spelled(), old?.Text.Value, made?.Text.Value)
        {
            Sense = FieldClasses.Of(word, old is not null, made is not null),
            Share = Values.Share(old?.Text.Value, made?.Text.Value),
            OldAt = old?.At,
            NewAt = made?.At,
        };

    private static Change Sharpened(Change change, FactValue? old, FactValue? made) => (old, made) switch
    {
        (Checker { Mode: CheckMode.Independent }, Checker { Mode: CheckMode.Concurrent }) => change with { Sense = Sense.Looser, Because = "the second person no longer looks alone" },
        (Checker { Mode: CheckMode.Concurrent }, Checker { Mode: CheckMode.Independent }) => change with { Sense = Sense.Tighter },
        (ConditionValue, ConditionValue) => change with { Sense = OfConditions(change.What, change.Old!, change.New!) },
        (DebtValue, DebtValue) => change with { Sense = Senses.Of(-Extent.Of(change.Old!, change.New!)) },
        (NameList a, NameList b) when FieldClasses.IsDemand(change.What) => change with { Sense = Senses.Of(-Extent.OfAny(Names(b), Names(a))) },
        (SpokenWords a, SpokenWords b) when change.Class == ChangeClass.Hazard && a.Blanks > b.Blanks => change with { Sense = Sense.Looser, Because = "a value is no longer written down" },
        (SpokenWords a, SpokenWords b) when a.Blanks < b.Blanks => change with { Sense = Sense.Tighter },
        (AgainFrom a, AgainFrom b) when a.AtMost != b.AtMost => change with { Sense = a.AtMost < b.AtMost ? Sense.Looser : Sense.Tighter },
        _ => change,
    };

    /// <summary>A stop that catches less, a demand that lets more pass and work that is done less often are looser.</summary>
    private static Sense OfConditions(string word, string old, string made) =>
        Senses.Of(word is "stop-if" or "only-if" ? Extent.Of(old, made) : -Extent.Of(old, made));

    private static string Names(NameList list) => string.Join(", ", list.Names.Select(n => n.Value));

    /// <summary>Counts thing by thing: <c>friction-disc 9 to 8</c>.</summary>
    private static IEnumerable<Change> Of(string where, FactWord word, Amounts old, Amounts made, Fact oldFact, Fact madeFact)
    {
        var things = old.All.Concat(made.All).Select(Thing).Distinct(StringComparer.Ordinal);
        foreach (var thing in things)
        {
            var (before, after) = (old.All.FirstOrDefault(a => Thing(a) == thing), made.All.FirstOrDefault(a => Thing(a) == thing));
            if (before is not null && after is not null && Says(before) == Says(after))
                continue;
            yield return new Change(FieldClasses.Of(word), where, $"{word.Spelled()} {thing}", before is null ? null : Says(before), after is null ? null : Says(after))
            {
                Sense = before is not null && after is not null ? Senses.Of(Strictness(after) - Strictness(before)) : FieldClasses.Of(word, before is not null, after is not null),
                Share = before?.Count is { Value: > 0 } from && after?.Count is { } to ? ((decimal)to.Value / from.Value) - 1 : null,
                OldAt = before?.At ?? oldFact.At,
                NewAt = after?.At ?? madeFact.At,
            };
        }
    }

    /// <summary>An exact number asks more than a least one.</summary>
    private static int Strictness(Amount amount) => amount.AtLeast ? 0 : 1;

    private static string Thing(Amount amount) => amount.AtPlace is { } place ? $"{amount.Thing} at {place}" : amount.Thing.Value;

    private static string Says(Amount amount) => amount switch
    {
        { All: true } => "all",
        { Count: { } n, OutOf: { } of } => string.Create(CultureInfo.InvariantCulture, $"{n.Value} of {of.Value}"),
        { Count: { } n, AtLeast: true } => string.Create(CultureInfo.InvariantCulture, $"{n.Value} or more"),
        { Count: { } n } => n.Value.ToString(CultureInfo.InvariantCulture),
        _ => "all of it",
    };
}
