using Witnessmark.Language.Findings;
using Witnessmark.Language.Wording;

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
                findings.Add(
                    Info,
                    value.Key.At,
                    Say.Capital($"{DeclaredName.Spoken(value.Key.Value)} is not asked in {entry.Says}."),
                    "What stands there would be kept by nobody and checked by nobody.",
                    NearMiss.Of(value.Key.Value, keys) is { } near ? $"Did you mean {near}?" : $"This step has {Say.Some(keys.Take(keys.Count - 1))}. A remark belongs under deviations.");
        }
    }
}
