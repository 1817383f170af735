using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Comparing;

/// <summary>Front matter, headings, contracts and prose around the steps.</summary>
internal static class HeadChanges
{
    /// <summary>Items have their own comparison; the version is the line above all others.</summary>
    private static readonly ImmutableHashSet<string> Elsewhere = ["version", "readings", "values", "tests", "hazards", "devices", "calls"];

    public static IEnumerable<Change> Between(Procedure old, Procedure made)
    {
        foreach (var change in DataChanges.Between("front matter", old.Node, made.Node, Elsewhere))
            yield return change.What.StartsWith("applies-to", StringComparison.Ordinal) ? Applies(change, old, made) : change;
        if (Meaning.Of(old.Introduction) != Meaning.Of(made.Introduction))
            yield return StepChanges.Text("introduction", "text", BlockText.Of(old.Introduction), BlockText.Of(made.Introduction));
        foreach (var (before, after) in Parts(old, made))
            foreach (var change in Of(before, after))
                yield return change;
    }

    /// <summary>Written for more machines than before is looser: nobody has tried it there.</summary>
    private static Change Applies(Change change, Procedure old, Procedure made)
    {
        var (before, after) = (old.AppliesTo?.Value, made.AppliesTo?.Value);
        var more = after is not null && before is not null && after.Positions.Any(p => before.Positions.All(b => b.Value != p.Value));
        var wider = before?.Serials is { } from && after?.Serials is { } to && SerialRange.Compare(to.Value.From, from.Value.From) < 0;
        return more || wider ? change with { Sense = Sense.Looser, Because = "it is for machines that it was not for" } : change;
    }

    private static IEnumerable<(ProcedurePart? Old, ProcedurePart? New)> Parts(Procedure old, Procedure made)
    {
        var names = old.Parts.Concat(made.Parts).Select(p => p.Name?.Value ?? "").Distinct(StringComparer.Ordinal);
        return names.Select(n => (old.Parts.FirstOrDefault(p => (p.Name?.Value ?? "") == n), made.Parts.FirstOrDefault(p => (p.Name?.Value ?? "") == n)));
    }

    private static IEnumerable<Change> Of(ProcedurePart? old, ProcedurePart? made)
    {
        var name = (made ?? old)!.Name?.Value;
        var where = name is null ? "contract" : $"part {name}";
        if (old is null || made is null)
            return [new Change(ChangeClass.Hazard, where, "part", old is null ? null : name, made is null ? null : name)];
        return
        [
            .. FactChanges.Between(where, old.Facts, made.Facts),
            .. Prose(where, old.Prose, made.Prose),
            .. Sections(old, made).SelectMany(s => Of(s.Old, s.New)),
        ];
    }

    private static IEnumerable<(Section? Old, Section? New)> Sections(ProcedurePart old, ProcedurePart made)
    {
        var names = old.Sections.Concat(made.Sections).Select(s => s.Heading?.Value ?? "").Distinct(StringComparer.Ordinal);
        return names.Select(n => (old.Sections.FirstOrDefault(s => (s.Heading?.Value ?? "") == n), made.Sections.FirstOrDefault(s => (s.Heading?.Value ?? "") == n)));
    }

    // steps of a section that came or went are told as steps; what held for all of them is told here
    private static IEnumerable<Change> Of(Section? old, Section? made)
    {
        var where = $"section {(made ?? old)!.Heading?.Value}".TrimEnd();
        if (old is null || made is null)
            yield return StepChanges.Text(where, "heading", old?.Heading?.Value ?? "", made?.Heading?.Value ?? "");
        foreach (var change in FactChanges.Between(where, old?.Facts ?? [], made?.Facts ?? []))
            yield return change;
        foreach (var change in Prose(where, old?.Prose ?? [], made?.Prose ?? []))
            yield return change;
    }

    private static IEnumerable<Change> Prose(string where, ImmutableArray<Block> old, ImmutableArray<Block> made) =>
        Meaning.Of(old) == Meaning.Of(made) ? [] : [StepChanges.Text(where, "text", BlockText.Of(old), BlockText.Of(made))];
}
