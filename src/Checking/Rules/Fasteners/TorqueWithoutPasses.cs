using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Fasteners;

/// <summary>Bolts have a torque, and nothing says in how many passes they come to it.</summary>
public sealed class TorqueWithoutPasses : ISheetRule
{
    public static RuleInfo Info { get; } = new("torque-without-passes", "Fasteners", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        // the workshop's hold for every group
        if (!library.Workshop.Passes.IsEmpty)
            return;
        var groups = machine.Fasteners.Where(g => g.Torque is not null && g.Passes.IsEmpty).ToList();
        // each group has its own, or none has a torque
        if (groups is not [var first, .. var others])
            return;
        findings.Add(
            Info,
            first.Torque!.Value.At,
            $"No passes are written for {Say.And(groups.Select(g => g.Id.Value))}, only the torque.",
            "The sheet has no number to dial and no circle to ink: nobody can see which bolts were done.",
            "Write the passes of the house in workshop.yaml: `tightening:` and below it `passes: [30 %, 60 %, 100 %, 100 % circular]`. A single bolt has `passes: [100 %]` of its own.",
            [.. others.Select(g => new FurtherPlace(g.Torque!.Value.At, "no passes either"))]);
    }
}
