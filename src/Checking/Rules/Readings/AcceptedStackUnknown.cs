using Witnessmark.Language.Findings;

namespace Witnessmark.Checking.Rules.Readings;

/// <summary>A value is accepted as the clearance of a stack that has none.</summary>
public sealed class AcceptedStackUnknown : IMeasuringRule
{
    public static RuleInfo Info { get; } = new("accepted-stack-unknown", "Readings", Severity.Fault);

    public static void Check(Measuring declared, FindingList findings)
    {
        foreach (var value in declared.Values)
        {
            // limits of its own, or none
            if (value.AcceptAsClearanceOf is not { } named)
                continue;
            // the stack has a clearance
            if (declared.Machine?.Stacks.Find(named.Value) is { Clearance: not null })
                continue;
            var stacks = declared.Machine?.Stacks.Where(s => s.Clearance is not null).Select(s => s.Id.Value).ToList() ?? [];
            var meant = NearMiss.Of(named.Value, stacks);
            findings.Add(
                Info,
                named.At,
                declared.Machine?.Stacks.Find(named.Value) is null
                    ? $"{value.Id.Value} is accepted as the clearance of {named.Value}, and the data sheet has no such stack."
                    : $"{value.Id.Value} is accepted as the clearance of {named.Value}, which gives none.",
                "The sheet has no limits to print beside the box, and every result passes.",
                meant is null ? "Name a stack with a clearance, or write the limits here: `accept: 2.8 to 3.6 mm`." : $"Did you mean {meant}?");
        }
    }
}
