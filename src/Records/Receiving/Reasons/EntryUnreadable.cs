using Witnessmark.Language.Findings;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>A value that is no number where a number belongs. It is not guessed.</summary>
public sealed class EntryUnreadable : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("entry-unreadable");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var value in held.Entries.SelectMany(Lists))
            Add(findings, value.Value.At, value.Key.Value, "a list", "one text", "as in the blank, behind the colon");
        foreach (var (value, turns) in held.Entries.SelectMany(OfNoTurn))
            Add(findings, value.Value.At, value.Key.Value, "one text", $"a line for each of {turns}", $"{turns.Names[0]}: {Typed.Text(value.Value)!.Value.Value}, a line each");
        foreach (var answer in held.Answers<CountAsk>().Where(a => Typed.Text(a.Value) is not null && Typed.Count(a.Value) is null))
            Add(findings, answer.Value.At, answer.Ask.Key, Typed.Text(answer.Value)!.Value.Value, "a whole number", "9");
        foreach (var answer in held.Answers<PassAsk>().Where(a => Typed.Text(a.Value) is not null && Typed.Count(a.Value) is null))
            Add(findings, answer.Value.At, answer.Ask.Key, Typed.Text(answer.Value)!.Value.Value, "a whole number", "4");
        foreach (var answer in held.Answers<WorkedAsk>())
            if (Typed.Text(answer.Value) is { } text && Unreadable(text.Value))
                Add(findings, answer.Value.At, answer.Ask.Key, text.Value, "a number and its unit", "3.24 mm");
        foreach (var answer in held.Answers<ReadingAsk>())
            foreach (var row in answer.Rows().Where(r => r.Unclear is not null))
                Add(findings, row.At, answer.Name(row), row.Unclear!, "readings as the gauge shows them", "5.02 5.01 5.02 mm");
    }

    /// <summary>Only rows of readings may be more than one text.</summary>
    private static IEnumerable<DataEntry> Lists(HeldEntry entry) => entry.Entry.Values.Where(v =>
        v.Value is not DataText && !Typed.IsEmpty(v.Value) &&
        !(entry.Asked.Find(v.Key.Value) is ReadingAsk ask && (ask.Pieces is not [""] || v.Value is DataList)) &&
        !(v.Value is DataMap && entry.Asked.Find(v.Key.Value) is { Turns: not null }));

    /// <summary>One text where each turn of a loop has its line: of which turn it is nobody can tell.</summary>
    private static IEnumerable<(DataEntry Value, LoopTurns Turns)> OfNoTurn(HeldEntry entry) =>
        from value in entry.Entry.Values
        where value.Value is DataText && !Typed.IsEmpty(value.Value)
        let ask = entry.Asked.Find(value.Key.Value)
        where ask is { Turns: not null } and not ReadingAsk
        select (value, ask.Turns!);

    /// <summary>A missing or wrong unit is reading-unit's.</summary>
    private static bool Unreadable(string text) =>
        QuantityReader.Quantity(text).Fault is { Problem: not (QuantityProblem.BareNumber or QuantityProblem.UnknownUnit) };

    private static void Add(FindingList findings, Location at, string key, string written, string belongs, string example) => findings.Add(
        Info,
        at,
        Say.Capital($"{DeclaredName.Spoken(key)} is {written}, which cannot be read as {belongs}."),
        "A decimal comma, a letter O for a zero or two numbers run together can be read in two ways; a guess would stand in the record as a measurement.",
        $"Type it as on the paper, with a decimal point: {example}.");
}
