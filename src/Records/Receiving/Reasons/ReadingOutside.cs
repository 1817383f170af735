using System.Collections.Immutable;
using Witnessmark.Engineering.Measuring;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>The sheet says stop at this reading, and the work went on.</summary>
public sealed class ReadingOutside : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("reading-outside");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var answer in held.Answers<ReadingAsk>().Where(a => a.Ask.Reading.Bands.Length > 0))
        {
            // an impossible number is no reading: reading-impossible says so
            var rows = answer.Sound().Where(r => r.In(r.Unit!).All(v => ReadingImpossible.IsPlausible(answer.Ask, v))).ToList();
            foreach (var (row, judged) in Judged(answer.Ask, rows))
                if (judged.Band is null || answer.Ask.Stops.Contains(judged.Band))
                    Add(findings, answer, row, judged);
        }
    }

    /// <summary>Each row by itself when every point counts; else all rows together, at the row where the value stands.</summary>
    private static IEnumerable<(TypedRow? Row, JudgedValue Judged)> Judged(ReadingAsk ask, List<TypedRow> rows)
    {
        if ((ask.Reading.Judge?.Value ?? "each") == "each")
            return rows.SelectMany(r => Values(ask, [r])
                .Where(v => v.Band is null || ask.Stops.Contains(v.Band)).Take(1)
                .Select(v => ((TypedRow?)r, v)));
        if (ask.Turns is not null)
            return rows.SelectMany(r => Values(ask, [r]).Select(v => ((TypedRow?)r, v)));
        return Values(ask, rows).Select(v => (rows.FirstOrDefault(r => r.Numbers.Contains(v.Value.Number)), v));
    }

    private static ImmutableArray<JudgedValue> Values(ReadingAsk ask, List<TypedRow> rows) =>
        Judgement.Of(ask.Reading, [.. rows.Select(r => r.In(r.Unit!).ToImmutableArray())])?.Values ?? [];

    private static void Add(FindingList findings, Answer<ReadingAsk> answer, TypedRow? row, JudgedValue judged)
    {
        var reading = answer.Ask.Reading;
        var judge = reading.Judge?.Value is { } word and not "each" ? $"{word} of " : "";
        var name = row is null || judge.Length > 0 ? DeclaredName.Spoken(answer.Ask.Key) : answer.Name(row);
        var where = judge.Length > 0 && row is { Piece.Length: > 0 } ? $", {row.Piece}," : "";
        var band = judged.Band is { } b ? $" ({DeclaredName.Spoken(b)})" : "";
        var limit = answer.Ask.Accept is { } accept ? $"; the limit is {accept}" : "";
        findings.Add(
            Info,
            row?.At ?? answer.Value.At,
            Say.Capital($"{judge}{name}{where} is {Rounded(judged.Value)}{band}{limit}."),
            $"The sheet says stop here: {answer.Entry.Says}. What was done after it stands on a part that does not pass.",
            Say.Capital(reading.Outside?.Value ?? "Put it right on the machine, measure again and write the new reading."));
    }

    private static Quantity Rounded(Quantity value) => value.Decimals > 4 ? value.RoundedTo(4) : value;
}
