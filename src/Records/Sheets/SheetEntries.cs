using System.Collections.Immutable;

namespace Witnessmark.Records.Sheets;

/// <summary>A step that has an entry in the sign-off.</summary>
/// <param name="AsksBy">Initials are asked: at a check, at a hold point and at the end of a section.</param>
/// <param name="AsksAt">The time is asked: at a hold point and at the end of a section.</param>
public sealed record SheetEntry(SheetStep Step, bool AsksBy, bool AsksAt)
{
    public Ask? Find(string key) => Step.Asks.FirstOrDefault(a => a.Key == key);

    /// <summary><c>step 16.6 (Tighten pass by pass)</c></summary>
    public string Says => $"step {Step.Code.Plain} ({Step.Fills.In(Step.Step.Name.Value)})";

    /// <summary>Keys that the entry can have besides <c>step</c>.</summary>
    public IEnumerable<string> Keys =>
        [.. Step.Asks.Select(a => a.Key), EntryKeys.By, EntryKeys.At, EntryKeys.LookedAgain, .. Step.MayBeLeftOut ? [EntryKeys.NotDone] : Array.Empty<string>()];
}

/// <summary>
/// The entries that a sign-off must have: one for every step that asks for something, and one for the last step of a section
/// that asks for nothing, so that somebody has signed for each section.
/// </summary>
public static class SheetEntries
{
    public static ImmutableArray<SheetEntry> Of(SheetPlan plan) => [.. plan.Sections.SelectMany(Of)];

    public static IEnumerable<SheetEntry> Of(SheetSection section)
    {
        var steps = section.Steps.SelectMany(s => s.Performed.Prepend(s)).ToList();
        var asking = steps.Where(s => s.Asks.Length > 0).ToList();
        if (asking.Count == 0)
            asking.AddRange(steps.TakeLast(1));
        foreach (var step in asking)
        {
            var closes = step == asking[^1];
            var holds = step.Asks.Any(a => a is HoldAsk);
            yield return new SheetEntry(step, closes || holds || step.Asks.Any(a => a is CheckAsk), closes || holds);
        }
    }
}
