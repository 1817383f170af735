using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>Empty lines of an entry, said once an entry.</summary>
public sealed class EntryValueMissing : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Query("entry-value-missing");

    public static void Check(Held held, FindingList findings)
    {
        foreach (var entry in held.Entries.Where(e => Due.Is(held, e.Asked) is not false))
        {
            var misspelt = entry.Entry.Values.Select(v => NearMiss.Of(v.Key.Value, entry.Asked.Keys)).ToHashSet();
            // a line under a misspelt key is not missing: entry-key-unknown says so
            var missing = Missing(entry).Where(k => !misspelt.Contains(k) || entry.Entry.Find(k) is not null).ToList();
            if (missing.Count == 0)
                continue;
            findings.Add(
                Info,
                entry.Entry.Step.At,
                Say.Capital($"{entry.Says} has no {Say.Some(missing.Select(DeclaredName.Spoken))} yet."),
                "A line left empty says that nobody has looked, counted or signed.",
                "Type what stands on the paper. If it is empty there too, do it on the machine first.");
        }
    }

    /// <summary>Whether the entry is there with everything that is asked.</summary>
    internal static bool IsGiven(Held held, SheetEntry asked) =>
        held.Entries.FirstOrDefault(e => e.Asked == asked) is { } entry && !Missing(entry).Any();

    /// <summary>Every turn; of a loop that may end before, one at least. Rows of readings are readings-too-few's.</summary>
    private static IEnumerable<string> Missing(Ask ask, DataNode? value)
    {
        if (Typed.IsEmpty(value))
            return [ask.Key];
        return ask is ReadingAsk || ask.Turns!.MayEnd || value is not DataMap map
            ? []
            : ask.Turns.Names.Where(t => Typed.IsEmpty(map.Find(t)?.Value)).Select(t => $"{ask.Key} of {t}");
    }

    private static IEnumerable<string> Missing(HeldEntry entry)
    {
        if (entry.NotDone)
            return [];
        var turns = entry.Asked.Step.Asks.Where(a => a.Turns is not null).SelectMany(a => Missing(a, entry.Entry.Find(a.Key)));
        var asked = entry.Asked.Step.Asks.Where(a => a.Turns is null).Select(a => a.Key);
        if (entry.Asked.AsksBy)
            asked = asked.Append(EntryKeys.By);
        if (entry.Asked.AsksAt)
            asked = asked.Append(EntryKeys.At);
        return asked.Where(k => Typed.IsEmpty(entry.Entry.Find(k))).Concat(turns);
    }
}
