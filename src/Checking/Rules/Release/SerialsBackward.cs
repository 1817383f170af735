using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Release;

/// <summary>The first serial number is above the last.</summary>
public sealed class SerialsBackward : IProcedureRule
{
    public static RuleInfo Info { get; } = new("serials-backward", "Release", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        // all serials, or open at the end
        if (scope.Procedure.AppliesTo?.Value.Serials is not { Value.To: { } to } serials)
            return;
        // upward
        if (SerialRange.Compare(serials.Value.From, to) <= 0)
            return;
        findings.Add(
            Info,
            serials.At,
            $"{scope.Procedure.Id.Value} applies to serials from {serials.Value.From} to {to}: there is no machine in that range.",
            "Held against a machine's plate, the procedure fits none, and somebody uses it all the same because the title fits.",
            $"Write the lower number first: `serials: from {to} to {serials.Value.From}`.");
    }
}
