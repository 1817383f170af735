using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Comparing;

/// <summary>Front matter, headings, contracts and prose around the steps.</summary>
internal static class HeadChanges
{
    /// <summary>Items have their own comparison; the version is the line above all others.</summary>
    private static readonly ImmutableHashSet<string> Elsewhere = ["version", "readings", "values", "tests", "hazards", "devices", "calls"];

    public static IEnumerable<Change> Between(Scope before, Scope after)
    {
        var (old, made) = (before.Procedure, after.Procedure);
        foreach (var change in DataChanges.Between("front matter", old.Node, made.Node, Elsewhere))
            yield return change.What.StartsWith("uses ", StringComparison.Ordinal) ? PerformedChanges.Pinned(change, before, after) : change.What.StartsWith("applies-to", StringComparison.Ordinal) ? Applies(change, old, made) : change;
        if (old.Heading?.Value != made.Heading?.Value)
            yield return StepChanges.Text("heading of the sheet", "text", old.Heading?.Value ?? "", made.Heading?.Value ?? "") with { OldAt = old.Heading?.At, NewAt = made.Heading?.At };
        if (Meaning.Of(old.Introduction) != Meaning.Of(made.Introduction))
            yield return StepChanges.Text("introduction", "text", BlockText.Of(old.Introduction), BlockText.Of(made.Introduction));
        foreach (var (was, now) in Parts(old, made))
            foreach (var change in Of(was, now))
                yield return change;
    }

    /// <summary>Written for more machines than before is looser: nobody has tried it there.</summary>
    private static Change Applies(Change change, Procedure old, Procedure made)
    {
        var (more, less) = (Reaches(made, old), Reaches(old, made));
        return more ? change with { Sense = Sense.Looser, Because = "it is for machines that it was not for" } : less ? change with { Sense = Sense.Tighter } : change;
    }

    /// <summary>Whether the first is for a machine or a place that the second is not for.</summary>
    private static bool Reaches(Procedure first, Procedure second)
    {
        if (first.AppliesTo?.Value is not { } reach || second.AppliesTo?.Value is not { } other)
            return second.AppliesTo is not null && first.AppliesTo is null;
        return reach.Positions.Any(p => other.Positions.All(o => o.Value != p.Value))
            || (reach.Serials is { } a && other.Serials is { } b && (SerialRange.Compare(a.Value.From, b.Value.From) < 0 || Beyond(a.Value.To, b.Value.To)));
    }

    // no last number is every number
    private static bool Beyond(string? to, string? other) => other is not null && (to is null || SerialRange.Compare(to, other) > 0);

    private static IEnumerable<(ProcedurePart? Old, ProcedurePart? New)> Parts(Procedure old, Procedure made)
    {
        var (gone, come) = (Left(old, made), Left(made, old));
        // one name gone and one come in its place is a part with another name
        if (gone.Count == 1 && come.Count == 1)
            yield return (gone[0], come[0]);
        else
            foreach (var one in gone.Select(g => ((ProcedurePart?)g, (ProcedurePart?)null)).Concat(come.Select(c => ((ProcedurePart?)null, (ProcedurePart?)c))))
                yield return one;
        foreach (var part in made.Parts.Except(come))
            yield return (old.Parts.First(p => Name(p) == Name(part)), part);
    }

    private static List<ProcedurePart> Left(Procedure here, Procedure there) => [.. here.Parts.Where(p => there.Parts.All(t => Name(t) != Name(p)))];

    private static string Name(ProcedurePart part) => part.Name?.Value ?? "";

    private static IEnumerable<Change> Of(ProcedurePart? old, ProcedurePart? made)
    {
        var name = (made ?? old)!.Name?.Value;
        var where = name is null ? "contract" : $"part {name}";
        if (old is null || made is null)
            return [new Change(ChangeClass.Hazard, where, "part", old is null ? null : name, made is null ? null : name)];
        return
        [
            .. Name(old) == Name(made) ? [] : new[] { StepChanges.Text(where, "name", Name(old), Name(made)) },
            .. FactChanges.Between(where, old.Facts, made.Facts),
            .. Prose(where, old.Prose, made.Prose),
            .. Sections(old, made).SelectMany(s => Of(s.Old, s.New)),
        ];
    }

    private static IEnumerable<(Section? Old, Section? New)> Sections(ProcedurePart old, ProcedurePart made)
    {
        var (gone, come) = (Left(old, made), Left(made, old));
        // renamed: the same steps stand below it
        foreach (var section in gone.ToList())
            if (come.FirstOrDefault(c => c.Steps.Any(s => section.Steps.Any(o => o.Slug == s.Slug))) is { } same)
            {
                yield return (section, same);
                gone.Remove(section);
                come.Remove(same);
            }
        foreach (var one in gone.Select(g => ((Section?)g, (Section?)null)).Concat(come.Select(c => ((Section?)null, (Section?)c))))
            yield return one;
        foreach (var section in made.Sections)
            if (old.Sections.FirstOrDefault(s => Name(s) == Name(section)) is { } same)
                yield return (same, section);
    }

    private static List<Section> Left(ProcedurePart here, ProcedurePart there) => [.. here.Sections.Where(s => there.Sections.All(t => Name(t) != Name(s)))];

    private static string Name(Section section) => section.Heading?.Value ?? "";

    // steps of a section that came or went are told as steps; what held for all of them is told here
    private static IEnumerable<Change> Of(Section? old, Section? made)
    {
        var where = $"section {(made ?? old)!.Heading?.Value}".TrimEnd();
        if (old?.Heading?.Value != made?.Heading?.Value)
            yield return StepChanges.Text(where, "heading", old?.Heading?.Value ?? "", made?.Heading?.Value ?? "");
        foreach (var change in FactChanges.Between(where, old?.Facts ?? [], made?.Facts ?? []))
            yield return change;
        foreach (var change in Prose(where, old?.Prose ?? [], made?.Prose ?? []))
            yield return change;
    }

    private static IEnumerable<Change> Prose(string where, ImmutableArray<Block> old, ImmutableArray<Block> made) =>
        Meaning.Of(old) == Meaning.Of(made) ? [] : [StepChanges.Text(where, "text", BlockText.Of(old), BlockText.Of(made))];
}
