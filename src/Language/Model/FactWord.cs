using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Witnessmark.Language.Model;

/// <summary>The words a fact can begin with. Spelling in <see cref="FactWords"/>.</summary>
public enum FactWord
{
    // under headings
    StartsWith, EndsWith, ForEach, Until, Odds, Owes,

    // under headings and in steps
    By, Zone, Tools, OnlyIf, Time,

    // verbs on things
    Remove, Fit, Loosen, Snug, Tighten, Place, Recover, Count,

    // verbs on declared items
    Drain, Fill, Measure, Inspect, Test, WorkOut, Lift, Land,

    // flow
    Decide, Outcome, StopIf, Requires, Leaves, AgainFrom, End, Perform,

    // how and who
    Tool, Call, Answer, Wait, Was, CheckedBy, Checks, Hold, HandOver,

    // of a translation
    Original,
}

/// <summary>Where a fact may stand.</summary>
[Flags]
public enum FactPlace
{
    None = 0,
    Heading = 1,
    Step = 2,
    TranslatedHeading = 4,
    TranslatedStep = 8,
}

/// <param name="Spelling">As it is written: <c>checked-by</c>.</param>
/// <param name="Often">May stand more than once in one place.</param>
/// <param name="Says">What the value is, in words, for messages and the reference.</param>
/// <param name="Means">What the fact is for, in words of the work.</param>
public sealed record FactRow(FactWord Word, string Spelling, FactPlace Place, bool Often, string Says, string Means);

/// <summary>The table of facts: one row a word. To add a fact, add a row here and a reader in Reading/Facts.</summary>
public static class FactWords
{
    private const FactPlace Both = FactPlace.Heading | FactPlace.Step;

    /// <summary>Words that are spoken or seen: all that a translation says of a step beside its text.</summary>
    private const FactPlace Spoken = FactPlace.Step | FactPlace.TranslatedStep;

    public static readonly ImmutableArray<FactRow> All =
    [
        new(FactWord.StartsWith, "starts-with", FactPlace.Heading, true, "a condition that holds before the first step", "what must be so before the work begins"),
        new(FactWord.EndsWith, "ends-with", FactPlace.Heading, true, "a condition that holds after the last step", "what is so when the work has ended"),
        new(FactWord.ForEach, "for-each", Both, false, "what is repeated: wheel-end in CL, CR; pin in 1 to 6; pass of {group}", "the step or section is done once for each"),
        new(FactWord.Until, "until", FactPlace.Heading, false, "the condition that ends the loop", "when a repeated section is done often enough"),
        new(FactWord.Odds, "odds", FactPlace.Heading, false, "chance and minutes of each turn: CL 35 % 20 min, …", "how likely each turn is the last, and how long it takes"),
        new(FactWord.Owes, "owes", FactPlace.Heading, true, "what is still to be done later: wheel-nut re-torque after 2 h, 10 h", "work that falls due after the hand-back"),
        new(FactWord.By, "by", Both, false, "roles, by comma", "who does it"),
        new(FactWord.Zone, "zone", Both, false, "a danger zone of the data sheet, or none", "where people stand while they do it"),
        new(FactWord.Tools, "tools", Both, false, "tools, by comma", "what lies ready, and is on the tool list"),
        new(FactWord.OnlyIf, "only-if", Both, false, "a condition", "done only where this is so"),
        new(FactWord.Time, "time", Both, false, "minutes: 2 to 4 min", "how long it takes"),
        new(FactWord.Remove, "remove", FactPlace.Step, false, "thing [n [of m]] [at place], by comma", "takes off; what is removed must be accounted for"),
        new(FactWord.Fit, "fit", FactPlace.Step, false, "thing [n [of m]] [at place], by comma", "puts in or on"),
        new(FactWord.Loosen, "loosen", FactPlace.Step, false, "group [n of m] [at place]", "breaks the torque and leaves them in"),
        new(FactWord.Snug, "snug", FactPlace.Step, false, "group [n of m] [at place]", "turns to contact, without torque"),
        new(FactWord.Tighten, "tighten", FactPlace.Step, false, "group [n of m] [at place]", "turns to the torque of the data sheet, in its passes"),
        new(FactWord.Place, "place", FactPlace.Step, false, "device by tag, or kind and number, [at place]", "puts a temporary device in; it must come out again"),
        new(FactWord.Recover, "recover", FactPlace.Step, false, "device by tag, or kind and number, [at place]", "takes a temporary device out again"),
        new(FactWord.Count, "count", FactPlace.Step, false, "thing = n, by comma", "pieces are counted and the number is written"),
        new(FactWord.Drain, "drain", FactPlace.Step, false, "an oil space", "lets the oil out of a space"),
        new(FactWord.Fill, "fill", FactPlace.Step, false, "an oil space", "fills a space with the oil and amount of the data sheet"),
        new(FactWord.Measure, "measure", FactPlace.Step, false, "readings, by comma", "reads a gauge and writes what it shows"),
        new(FactWord.Inspect, "inspect", FactPlace.Step, false, "readings that are looked at, by comma", "looks, and writes one of the declared verdicts"),
        new(FactWord.Test, "test", FactPlace.Step, false, "a test", "does a declared test to its end"),
        new(FactWord.WorkOut, "work-out", FactPlace.Step, false, "values, by comma, or setting of wrench for group with adapter", "reckons from the readings; the sheet has the line to reckon on"),
        new(FactWord.Lift, "lift", FactPlace.Step, false, "a load", "takes the weight of a load"),
        new(FactWord.Land, "land", FactPlace.Step, false, "a load on where", "sets a load down and takes the hook off"),
        new(FactWord.Decide, "decide", FactPlace.Step, false, "the name of the decision", "chooses one of the outcomes below"),
        new(FactWord.Outcome, "outcome", FactPlace.Step, true, "name when condition [or condition], or name otherwise", "one way that the decision can go"),
        new(FactWord.StopIf, "stop-if", FactPlace.Step, true, "a condition", "work stops when this is so"),
        new(FactWord.Requires, "requires", FactPlace.Step, true, "a condition", "what must be so before this step"),
        new(FactWord.Leaves, "leaves", FactPlace.Step, true, "state [at place] = value", "what the step makes so, where no verb says it"),
        new(FactWord.AgainFrom, "again-from", FactPlace.Step, false, "step, at most n times, then end name (kind)", "goes back to an earlier step, so many times at most"),
        new(FactWord.End, "end", FactPlace.Step, false, "name (done, stopped-safe or escalate)", "the work ends here, and how"),
        new(FactWord.Perform, "perform", FactPlace.Step, true, "ID [part name] [param = value, …]", "does all of another procedure, or a part of one"),
        new(FactWord.Tool, "tool", FactPlace.Step, false, "the instrument or wrench", "what the step is done or read with; its number is written"),
        new(FactWord.Call, "call", Spoken, false, "what is called out, or the name of a call", "said aloud before anything moves"),
        new(FactWord.Answer, "answer", Spoken, false, "what is answered; ___ is a blank", "what the other says back"),
        new(FactWord.Wait, "wait", FactPlace.Step, false, "a time [until what]", "nothing is done until the time is over"),
        new(FactWord.Was, "was", FactPlace.Step, false, "the step's name in the version before", "joins a renamed step with its records"),
        new(FactWord.CheckedBy, "checked-by", FactPlace.Step, false, "role (independent or concurrent)", "a second person who looks, and signs"),
        new(FactWord.Checks, "checks", FactPlace.Step, false, "the name of the step that is checked", "the step that the second person looks at"),
        new(FactWord.Hold, "hold", Spoken, false, "what must be seen before work goes on; ___ for a value", "work goes on only when this is written and signed"),
        new(FactWord.HandOver, "hand-over", FactPlace.Step, false, "roles to roles", "one crew may give the work to another here"),
        new(FactWord.Original, "original", FactPlace.TranslatedHeading | FactPlace.TranslatedStep, false, "the mark of the words that are translated here", "joins a translation with the words it was made from"),
    ];

    private static readonly FrozenDictionary<string, FactRow> BySpelling = All.ToFrozenDictionary(r => r.Spelling, StringComparer.Ordinal);
    private static readonly FrozenDictionary<string, FactRow>.AlternateLookup<ReadOnlySpan<char>> BySigns = BySpelling.GetAlternateLookup<ReadOnlySpan<char>>();
    private static readonly FrozenDictionary<FactWord, FactRow> ByWord = All.ToFrozenDictionary(r => r.Word);

    public static FactRow? Find(ReadOnlySpan<char> spelling) => BySigns.TryGetValue(spelling, out var row) ? row : null;

    public static FactRow Row(this FactWord word) => ByWord[word];

    public static string Spelled(this FactWord word) => ByWord[word].Spelling;

    /// <summary>The first fact that begins with the word, or null.</summary>
    public static Fact? Find(this ImmutableArray<Fact> facts, FactWord word)
    {
        foreach (var fact in facts)
            if (fact.Word == word)
                return fact;
        return null;
    }

    /// <summary>How often the work is done: once for each that <c>for-each</c> lists among the facts, or once.</summary>
    public static int Turns(this ImmutableArray<Fact> facts) =>
        facts.Find(FactWord.ForEach)?.Value is Loop { In: [_, ..] listed } ? listed.Length : 1;

    /// <summary>Verbs that handle an amount of something.</summary>
    public static bool HandlesThings(this FactWord word) => word is >= FactWord.Remove and <= FactWord.Count;
}
