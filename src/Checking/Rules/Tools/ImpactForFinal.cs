using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Tools;

/// <summary>Bolts are brought to their torque with a tool that cannot show torque.</summary>
public sealed class ImpactForFinal : IProcedureRule
{
    public static RuleInfo Info { get; } = new("impact-for-final", "Tools", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var job in scope.Tightenings())
        {
            // a torque wrench, or nothing named: the latter is another fault
            if (job.Wrench is not { Kind: { } kind } tool || tool.IsTorqueWrench || tool.IsAdapter)
                continue;
            // without a torque there is nothing to show
            if (job.Group.Torque is not { } torque)
                continue;
            var wrenches = scope.ToolLists.SelectMany(t => t.Wrenches).Where(w => w.IsTorqueWrench && Reaches(w, job.Group)).Select(w => w.Id.Value).ToList();
            findings.Add(
                Info,
                job.At,
                $"{job.Group.Id.Value} get {torque.Value} with {tool.Id.Value}, {Say.Article(kind.Value)}.",
                "The clamp load from blows depends on socket, air and patience: some bolts stretch, some are loose, and all look the same.",
                wrenches.Count > 0 ? $"Tighten with a torque wrench: {Say.Or(wrenches)}." : "Tighten with a torque wrench; keep this tool for running down and loosening.",
                new FurtherPlace(kind.At, kind.Value));
        }
    }

    private static bool Reaches(Wrench wrench, FastenerGroup group) =>
        wrench.Range is { } range && range.Value.Unit.SameKindAs(group.Torque!.Value.Value.Target.Unit) && range.Value.Contains(group.Torque.Value.Value.Target);
}
