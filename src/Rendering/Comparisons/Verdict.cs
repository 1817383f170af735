using Witnessmark.Comparing;
using Witnessmark.Language.Wording;

namespace Witnessmark.Rendering.Comparisons;

/// <summary>The first line of every report: whether the auditor has to read on.</summary>
internal static class Verdict
{
    public static string Of(WorkshopComparison comparison)
    {
        var changes = comparison.InReadingOrder.Where(c => c.Class == comparison.Class).DistinctBy(Once).ToList();
        return comparison.Class switch
        {
            ChangeClass.Hazard => $"HAZARD: {Say.Count(changes.Count, "change")} that can hurt people{Looser(changes)}{Hazards(changes)}.",
            ChangeClass.Method => $"METHOD: the work goes otherwise within the same limits; {Say.Count(changes.Count, "change")}.",
            ChangeClass.Wording => $"WORDING: only words; {Say.Count(changes.Count, "change")}.",
            ChangeClass.Layout => "LAYOUT: only how it is written; every hash is the same.",
            _ => "No difference in meaning.",
        };
    }

    /// <summary>One change, however many procedures it is told of: a thing of a data sheet, or a common part that others perform.</summary>
    private static (string, string, string?, string?) Once(Change change) =>
        (change.Through is { } id && change.Where.StartsWith($"{id}, ", StringComparison.Ordinal) ? change.Where[(id.Length + 2)..] : change.Where, change.What, change.Old, change.New);

    private static string Looser(List<Change> changes) => changes.Count(c => c.Sense == Sense.Looser) switch
    {
        0 => "",
        var looser when looser == changes.Count => looser == 1 ? ", looser" : ", all looser",
        var looser => $", {looser} looser",
    };

    private static string Hazards(List<Change> changes) => changes.SelectMany(c => c.Hazards).Distinct(StringComparer.Ordinal).ToList() is { Count: > 0 } hazards ? $" (under {Say.And(hazards)})" : "";
}
