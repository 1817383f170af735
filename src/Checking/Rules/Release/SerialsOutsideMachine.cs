using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Release;

/// <summary>A procedure applies to serial numbers that its data sheet does not cover.</summary>
public sealed class SerialsOutsideMachine : IProcedureRule
{
    public static RuleInfo Info { get; } = new("serials-outside-machine", "Release", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        // no range on one of the two
        if (scope.Machine?.Serials is not { } sheet || scope.Procedure.AppliesTo?.Value.Serials is not { } serials)
            return;
        // a range that runs backward: serials-backward says it
        if (serials.Value.To is { } to && SerialRange.Compare(serials.Value.From, to) > 0)
            return;
        // within the sheet's
        if (sheet.Value.Contains(serials.Value.From) && EndsWithin(serials.Value, sheet.Value))
            return;
        findings.Add(
            Info,
            serials.At,
            $"{scope.Procedure.Id.Value} applies to serials {serials.Value}; the data sheet of {scope.Machine.Id.Value} covers {sheet.Value}.",
            "Outside its range the sheet's torques, counts and thicknesses belong to another machine.",
            "Keep the procedure within the data sheet's range, or widen the sheet's after somebody has looked at such a machine.",
            new FurtherPlace(sheet.At, $"the data sheet covers {sheet.Value}"));
    }

    private static bool EndsWithin(SerialRange inner, SerialRange outer) => outer.To is null || (inner.To is { } to && outer.Contains(to));
}
