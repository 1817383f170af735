using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Checklist.InWords;

namespace Witnessmark.Rendering.Site;

/// <summary>What pages say of a procedure before its first step.</summary>
internal static class ProcedureWords
{
    public static string Status(Procedure procedure) => procedure.Status?.Value switch
    {
        ReleaseStatus.Released => "released",
        ReleaseStatus.InReview => "in review, not for work",
        ReleaseStatus.Withdrawn => "withdrawn, not for work",
        _ => "draft, not for work",
    };

    public static string AppliesTo(Procedure procedure)
    {
        if (procedure.IsCommonPart)
            return "common part, performed by others";
        var applies = procedure.AppliesTo?.Value;
        var serials = applies?.Serials is { } s ? $"serial {s.Value}" : "";
        var positions = applies is { Positions.IsEmpty: false } ? string.Join(", ", applies.Positions.Select(p => p.Value)) : "";
        return string.Join("; ", new[] { procedure.Machine?.Value.ToUpperInvariant() ?? "", serials, positions }.Where(t => t.Length > 0));
    }

    /// <summary>The sum that its sheet prints, with what it performs; of all its parts. Empty when no time is written.</summary>
    public static string TotalTime(Scope scope) => new QuantityWords(Words.English).Sum(
        [.. scope.Procedure.Parts.SelectMany(p => SheetPlanner.Plan(scope, p.Name?.Value).Sections).SelectMany(s => SheetContext.Durations(s))]);

    public static string Crew(Procedure procedure) =>
        string.Join(", ", procedure.Crew.Select(c => c.Number.Value == 1 ? c.Role.Value : $"{c.Number.Value} {c.Role.Value}"));
}
