using Witnessmark.Comparing;

namespace Witnessmark.Rendering.Comparisons;

/// <summary>What changed in a common part is told of that part, and who performs it is named there.</summary>
internal sealed class ToldOnce(WorkshopComparison comparison)
{
    private readonly Dictionary<string, ProcedureComparison> _byId = comparison.Procedures.ToDictionary(p => p.Id, StringComparer.Ordinal);

    /// <summary>Changes to be told of a procedure itself.</summary>
    public IEnumerable<Change> Own(ProcedureComparison procedure) => procedure.Changes.Where(c => Home(c) is null);

    /// <summary>Common parts whose changes it shares, by id.</summary>
    public IReadOnlyList<ProcedureComparison> Performed(ProcedureComparison procedure) => [.. procedure.Changes.Select(Home).OfType<ProcedureComparison>().DistinctBy(p => p.Id)];

    /// <summary>Ids of those that perform it and differ with it.</summary>
    public IReadOnlyList<string> Callers(ProcedureComparison procedure) => [.. comparison.Procedures.Where(p => Performed(p).Any(c => c.Id == procedure.Id)).Select(p => p.Id)];

    private ProcedureComparison? Home(Change change) =>
        change.Through is { } id && _byId.GetValueOrDefault(id) is { } home && home.Changes.Any(c => $"{id}, {c.Where}" == change.Where && c.What == change.What && c.Old == change.Old && c.New == change.New) ? home : null;
}
