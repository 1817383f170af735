using System.Globalization;
using System.Text;
using Witnessmark.Comparing;
using Witnessmark.Language.Wording;

namespace Witnessmark.Rendering.Comparisons;

/// <summary>A comparison for a person at a prompt: the class first, what touches safety before all else, old and new below each other.</summary>
public static class ComparisonText
{
    public static string Of(WorkshopComparison comparison)
    {
        var text = new StringBuilder().Append(CultureInfo.InvariantCulture, $"{Verdict.Of(comparison)}\n\n");
        var told = new ToldOnce(comparison);
        // what concerns every procedure stands behind those that it can hurt no more than
        var shared = comparison.House.Select(c => c.Class).DefaultIfEmpty(ChangeClass.None).Max();
        foreach (var procedure in ByWeight(comparison).Where(p => p.Class >= shared))
            Write(text, procedure, told);
        if (comparison.House.Length > 0)
        {
            text.Append("shared by every procedure\n\n");
            foreach (var change in comparison.House)
                Write(text, change);
        }
        foreach (var procedure in ByWeight(comparison).Where(p => p.Class < shared))
            Write(text, procedure, told);
        return comparison.Class == ChangeClass.None ? $"{Verdict.Of(comparison)}\n" : text.Append(Sum(comparison)).Append('\n').ToString();
    }

    private static IEnumerable<ProcedureComparison> ByWeight(WorkshopComparison comparison) =>
        comparison.Procedures.OrderByDescending(p => p.Class).ThenByDescending(p => p.Changes.Any(c => c is { Class: ChangeClass.Hazard, Sense: Sense.Looser }));

    /// <summary><c>2 procedures differ: 1 hazard, 1 layout.</c></summary>
    public static string Sum(WorkshopComparison comparison)
    {
        if (comparison.Procedures.IsEmpty && comparison.House.IsEmpty)
            return "No difference in meaning.";
        var kinds = comparison.Procedures.GroupBy(p => p.Class).OrderByDescending(g => g.Key).Select(g => string.Create(CultureInfo.InvariantCulture, $"{g.Count()} {ChangeWords.Of(g.Key)}"));
        var house = comparison.House.IsEmpty ? "" : $" {Say.Count(comparison.House.Length, "change")} outside the procedures.";
        return comparison.Procedures.IsEmpty
            ? $"No procedure differs.{house}"
            : $"{Say.Count(comparison.Procedures.Length, "procedure")} {(comparison.Procedures.Length == 1 ? "differs" : "differ")}: {string.Join(", ", kinds)}.{house}";
    }

    private static void Write(StringBuilder text, ProcedureComparison procedure, ToldOnce told)
    {
        text.Append(CultureInfo.InvariantCulture, $"{procedure.Id} {ChangeWords.Versions(procedure)}: {ChangeWords.Of(procedure.Class).ToUpperInvariant()}\n\n");
        if (told.Callers(procedure) is { Count: > 0 } callers)
            text.Append(CultureInfo.InvariantCulture, $"  performed by {Say.And(callers)}, which {(callers.Count == 1 ? "changes" : "change")} with it\n\n");
        foreach (var change in told.Own(procedure))
            Write(text, change);
        foreach (var performed in told.Performed(procedure))
            text.Append(CultureInfo.InvariantCulture, $"  {ChangeWords.Of(performed.Class),-8}it performs {performed.Id}: see there\n\n");
        if (procedure.SinceRelease is { } since)
        {
            text.Append(CultureInfo.InvariantCulture, $"  beside {since.Old?.Version} as it was released: {ChangeWords.Of(since.Class).ToUpperInvariant()}, {Say.Count(since.Changes.Length, "change")}\n\n");
            foreach (var change in ChangeWords.Further(procedure))
                Write(text, change);
        }
        if (procedure.Class == ChangeClass.Layout)
            text.Append("  Only its layout differs: the hash is the same.\n\n");
    }

    private static void Write(StringBuilder text, Change change)
    {
        var mark = ChangeWords.Mark(change);
        text.Append(CultureInfo.InvariantCulture, $"  {ChangeWords.Of(change.Class),-8}{change.Where}: {change.What}{(mark.Length > 0 ? $" ({mark})" : "")}\n");
        text.Append(CultureInfo.InvariantCulture, $"          was {change.Old ?? "nothing"}\n          is  {change.New ?? "nothing"}\n");
        foreach (var (what, old, made) in change.Worked)
            text.Append(CultureInfo.InvariantCulture, $"          {what}\n            was {old ?? "nothing"}\n            is  {made ?? "nothing"}\n");
        if (change.Because is { } because)
            text.Append(CultureInfo.InvariantCulture, $"          {because}\n");
        if (change.Hazards.Length > 0)
            text.Append(CultureInfo.InvariantCulture, $"          under {string.Join(", ", change.Hazards)}\n");
        text.Append('\n');
    }
}
