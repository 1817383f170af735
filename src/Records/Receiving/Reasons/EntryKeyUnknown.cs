using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>A line that the step does not ask for.</summary>
public sealed class EntryKeyUnknown : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Query("entry-key-unknown");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var entry in held.Entries)
        {
            var keys = entry.Asked.Keys.ToList();
            foreach (var value in entry.Entry.Values.Where(v => !keys.Contains(v.Key.Value)))
                Add(findings, value.Key, entry.Says, keys, $"This step has {Say.Some(keys.Take(keys.Count - 1))}. A remark belongs under deviations.");
            foreach (var ask in entry.Asked.Step.Asks.Where(a => a.Turns is not null && a is not ReadingAsk))
                if (entry.Entry.Find(ask.Key) is DataMap map)
                    foreach (var turn in map.Entries.Where(e => !ask.Turns!.Names.Contains(e.Key.Value)))
                        Add(findings, turn.Key, $"{DeclaredName.Spoken(ask.Key)} of {entry.Says}", ask.Turns!.Names, $"Its turns are {Say.Some(ask.Turns.Names)}.");
        }
    }

    private static void Add(FindingList findings, Located<string> key, string where, IEnumerable<string> known, string otherwise) => findings.Add(
        Info,
        key.At,
        Say.Capital($"{DeclaredName.Spoken(key.Value)} is not asked in {where}."),
        "What stands there would be kept by nobody and checked by nobody.",
        NearMiss.Of(key.Value, known) is { } near ? $"Did you mean {near}?" : otherwise);
}
