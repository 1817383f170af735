using Witnessmark.Language.Findings;

namespace Witnessmark.Records.Receiving.Reasons;

/// <summary>Nothing to hold it against.</summary>
public sealed class ProcedureUnknown : IReason
{
    public static RuleInfo Info { get; } = ReasonInfo.Fault("procedure-unknown");

    public static void Check(Held held, FindingList findings)
    {
        // without any id head-missing says so
        if (held.Plan is not null || held.SignOff.Procedure is not { } id)
            return;
        var part = held.Library.Procedure(id.Value) is null ? null : held.SignOff.Part;
        var near = NearMiss.Of(id.Value, held.Library.Procedures.Names);
        findings.Add(
            Info,
            part?.At ?? id.At,
            part is { } p ? $"{id.Value} has no part {p.Value}." : $"There is no procedure {id.Value} in this workshop.",
            "A sign-off says that the steps of a sheet were done. Without the sheet nobody can tell which steps.",
            part is null && near is not null ? $"Did you mean {near}? Look at the head of the paper." : "Copy it from the head of the paper.");
    }
}
