using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Tools;

/// <summary>Bolts with a torque are tightened and no wrench is named for it.</summary>
public sealed class TightenedWithoutWrench : IProcedureRule
{
    public static RuleInfo Info { get; } = new("tightened-without-wrench", "Tools", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var job in scope.Tightenings())
        {
            // a wrench is named, or there is no torque to set on one
            if (job.Wrench is not null || job.Group.Torque is not { } torque)
                continue;
            // without a tool list no name can be looked up
            if (scope.ToolLists.IsEmpty)
                continue;
            var wrenches = scope.ToolLists
                .SelectMany(t => t.Wrenches)
                .Where(w => w is { IsTorqueWrench: true, Range: not null } && w.Range.Value.Value.Unit.Kind == "torque" && w.Range.Value.Value.Contains(torque.Value.Target))
                .Select(w => w.Id.Value)
                .ToList();
            findings.Add(
                Info,
                job.At,
                $"Step {job.Step.Step.Number} tightens {job.Group.Id.Value} to {torque.Value} and names no wrench of the tool list.",
                "Which wrench it was, and whether it reaches the torque, is then left to the day.",
                wrenches.Count > 0 ? $"Name one that reaches it: {Say.Or(wrenches)}." : $"Put a torque wrench that reaches {torque.Value.Target} on the tool list and name it here.",
                new FurtherPlace(torque.At, $"{torque.Value}"));
        }
    }
}
