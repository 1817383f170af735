using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Torque;

/// <summary>Bolts are tightened in a procedure, and the data sheet gives them no torque.</summary>
public sealed class TightenedWithoutTorque : ISheetRule
{
    public static RuleInfo Info { get; } = new("tightened-without-torque", "Torque", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var group in machine.Fasteners)
        {
            // it has one
            if (group.Torque is not null)
                continue;
            // nobody tightens it: then none is owed
            if (FirstTightening(machine, library, group) is not { } job)
                continue;
            findings.Add(
                Info,
                group.Id.At,
                $"{Say.Step(job.Step)} tightens {group.Id.Value}, and the data sheet gives no torque for them.",
                "The sheet cannot print what to dial, so everyone pulls until it feels right.",
                "Write the torque with its tolerance and source: `torque: 235 ± 12 N·m`, `basis: maker data`.",
                new FurtherPlace(job.At, "tightened here"));
        }
    }

    private static TighteningJob? FirstTightening(Machine machine, Library library, FastenerGroup group) => library.Procedures
        .Where(p => p.Machine?.Value == machine.Id.Value)
        .SelectMany(p => library.ScopeOf(p).Tightenings())
        .FirstOrDefault(j => j.Group == group);
}
