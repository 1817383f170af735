using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Comparing;

/// <summary>
/// Two states of a workshop by what they mean: procedure by procedure, with every change of a data sheet followed into each one that
/// uses it. Pure: who calls it has read both.
/// </summary>
public static class Comparer
{
    /// <param name="only">Ids of procedures to look at; null for all of them.</param>
    public static WorkshopComparison Between(Library old, Library made, IReadOnlySet<string>? only = null)
    {
        var ids = old.Procedures.Names.Concat(made.Procedures.Names).Distinct(StringComparer.Ordinal).Where(id => only is null || only.Contains(id)).Order(StringComparer.Ordinal);
        ImmutableArray<ProcedureComparison> procedures = [.. ids.Select(id => Between(old, old.Procedure(id), made, made.Procedure(id))).Where(c => c.Class != ChangeClass.None)];
        var told = procedures.SelectMany(p => p.Changes).Select(Key).ToHashSet();
        var shared = SheetChanges.Between(old, made, only).Where(c => !told.Contains(Key(c)));
        return new WorkshopComparison(procedures, [.. ReadingOrder.Of([.. HouseChanges.Between(old.Workshop, made.Workshop).Where(c => !told.Contains(AsCall(c))), .. shared, .. TranslationChanges.Between(old, made, only)])]);
    }

    /// <summary>As a call of the workshop file is told of a procedure that uses it.</summary>
    private static (string Where, string What, string? Old, string? New) AsCall(Change change) =>
        change.What.Split(' ') is ["calls", var call, var what] ? ($"calls, {call}", what, change.Old, change.New) : Key(change);

    private static (string Where, string What, string? Old, string? New) Key(Change change) => (change.Where, change.What, change.Old, change.New);

    /// <summary>One procedure, also across two workshops or two ids.</summary>
    public static ProcedureComparison Between(Library oldLibrary, Procedure? old, Library newLibrary, Procedure? made) => Between(oldLibrary, old, newLibrary, made, []);

    /// <param name="within">Procedures being compared: one that performs itself is a fault elsewhere and ends here.</param>
    internal static ProcedureComparison Between(Library oldLibrary, Procedure? old, Library newLibrary, Procedure? made, ImmutableHashSet<string> within)
    {
        if (old is null && made is null)
            throw new ArgumentException("one of the two procedures is needed", nameof(made));
        var id = (made ?? old)!.Id.Value;
        var (from, to) = (Version(oldLibrary, old), Version(newLibrary, made));
        if (from is null || to is null)
            return new ProcedureComparison(id, from, to, [new Change(ChangeClass.Hazard, id, "procedure", from?.Title, to?.Title)]);
        if (from.Hash == to.Hash)
            return new ProcedureComparison(id, from, to, []) { Class = SameText(old!, made!) ? ChangeClass.None : ChangeClass.Layout };
        var (before, after) = (oldLibrary.ScopeOf(old!), newLibrary.ScopeOf(made!));
        return new ProcedureComparison(id, from, to, Told(id, from, to, ReadingOrder.Of(Changes(before, after, within.Add(id)))));
    }

    private static IEnumerable<Change> Changes(Scope old, Scope made, ImmutableHashSet<string> within)
    {
        var steps = StepMatches.Between(old.Procedure, made.Procedure);
        return
        [
            .. HeadChanges.Between(old, made),
            .. MessageChanges.Between(old.Procedure, made.Procedure, steps),
            .. OrderChanges.Of(steps),
            .. steps.Matched.SelectMany(m => StepChanges.Of(m).Select(c => (c.What == "tool" ? InUse.Gauged(c, old, made) : c) with { Hazards = OrderChanges.Hazards(m.New) })),
            .. ItemChanges.Between(old, made),
            .. DialChanges.Between(old, made),
            .. PerformedChanges.Between(old, made, within),
            .. StopChanges.Between(old, made, steps),
            .. SheetChanges.AtStops(old, made),
        ];
    }

    /// <summary>Never nothing: what the hash covers and no comparison names is told as the worst that it can be.</summary>
    private static ImmutableArray<Change> Told(string id, ComparedVersion old, ComparedVersion made, IEnumerable<Change> changes) => changes.ToImmutableArray() is { Length: > 0 } told
        ? told
        : [new Change(ChangeClass.Hazard, id, "hash", old.Hash[..12], made.Hash[..12]) { Because = "the two sheets are not the same, and what differs has no name here: lay the prints side by side" }];

    private static bool SameText(Procedure old, Procedure made) => old.Source.Content.ReplaceLineEndings("\n") == made.Source.Content.ReplaceLineEndings("\n");

    private static ComparedVersion? Version(Library library, Procedure? procedure) => procedure is null
        ? null
        : new ComparedVersion(procedure.Version?.Value ?? "", ProcedureHash.Of(library, procedure).Hex, procedure.Title?.Value ?? procedure.Id.Value);
}
