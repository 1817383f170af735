using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Checking.Rules.Tools;

/// <summary>A tightening with a torque wrench, and what the wrench would have to show at the full torque.</summary>
/// <param name="Setting">Through the adapter when there is one.</param>
internal sealed record WrenchSettings(TighteningJob Job, Wrench Wrench, Toleranced Torque, Quantity Setting)
{
    /// <summary>Leaves out what cannot be worked out: no torque, no torque wrench, an adapter without its lengths.</summary>
    public static IEnumerable<WrenchSettings> In(Scope scope)
    {
        foreach (var job in scope.Tightenings())
            if (job is { Wrench: { IsTorqueWrench: true } wrench, Group.Torque: { Value.Target.Unit.Kind: "torque" } torque })
            {
                var setting = job.Adapter is null ? torque.Value.Target : Adapter.Setting(torque.Value.Target, wrench, job.Adapter)?.Value;
                if (setting is { } needed)
                    yield return new WrenchSettings(job, wrench, torque.Value, needed);
            }
    }

    /// <summary>The torque wrenches of the tool lists that this setting suits.</summary>
    public IEnumerable<string> Fitting(Scope scope) => scope.ToolLists
        .SelectMany(t => t.Wrenches)
        .Where(w => w.IsTorqueWrench && WrenchRange.Check(w, Setting, scope.Library.Workshop.Limits) is { Fits: true })
        .Select(w => w.Id.Value);

    /// <summary>The passes that the group is tightened in: its own, or the workshop's.</summary>
    public IEnumerable<TorquePass> Passes(Scope scope) =>
        (Job.Group.Passes.IsEmpty ? scope.Library.Workshop.Passes : Job.Group.Passes).Select(p => p.Value);
}
