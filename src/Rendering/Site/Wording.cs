using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Checklist.InWords;

namespace Witnessmark.Rendering.Site;

/// <summary>Data in words, as pages say it.</summary>
internal static class Wording
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
        [.. scope.Procedure.Parts.SelectMany(p => SheetPlanner.Plan(scope, p.Name?.Value).Sections).SelectMany(s => s.Steps).SelectMany(SheetContext.Durations)]);

    /// <summary>Declared names as people read them: <c>lock-pins = all engaged</c> is "lock pins = all engaged". Tags (TW-340, WB-60) stay as they are stamped.</summary>
    public static string Spaced(string text) => string.Join(' ', text.Split(' ').Select(w => w.Length == 1 ? w : Names.Shown(w)));

    public static string Crew(Procedure procedure) =>
        string.Join(", ", procedure.Crew.Select(c => c.Number.Value == 1 ? c.Role.Value : $"{c.Number.Value} {c.Role.Value}"));

    /// <summary><c>4.92 to 5.08 mm (0.1938 to 0.2000 in)</c></summary>
    public static string Both(QuantityRange range, bool difference = false) => DualUnits.Beside(range, difference) is { } beside ? $"{range} ({beside})" : range.ToString();

    public static string Both(Toleranced value) => DualUnits.Beside(value) is { } beside ? $"{value} ({beside})" : value.ToString();

    public static string Both(Quantity value) => DualUnits.Beside(value) is { } beside ? $"{value} ({beside})" : value.ToString();
}
