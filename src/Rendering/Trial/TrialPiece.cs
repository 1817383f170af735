using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Site;

namespace Witnessmark.Rendering.Trial;

/// <summary>One sheet to be tried: a part of a procedure in one language.</summary>
/// <param name="Identity">Of a copy that was never issued.</param>
/// <param name="IsTranslated">False in the procedure's own language.</param>
public sealed record TrialPiece(SheetPlan Plan, SheetIdentity Identity, Words Words, bool IsTranslated)
{
    internal SheetContext Context => new(Plan, Identity, Words);

    /// <summary>As its sheet has it; null where the procedure is done in one piece.</summary>
    internal string? PartSaid => Plan.Part.Name is { } part ? Context.Tongue.Name(part.Value) : null;

    /// <summary><c>WB-40 2.1.0, strip</c></summary>
    internal string Says => $"{Identity.Procedure} {Identity.Version}{(PartSaid is { } part ? $", {part}" : "")}";

    /// <summary>As specimens are named: two hyphens before a part.</summary>
    internal string File(string kind) => $"{kind}{(Plan.Part.Name is { } part ? $"--{SitePages.FileName(part.Value)}" : "")}{Suffix}";

    internal string Suffix => IsTranslated ? $"-{Words.Language}" : "";
}
