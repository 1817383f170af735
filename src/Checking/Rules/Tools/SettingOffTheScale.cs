using Witnessmark.Engineering;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Tools;

/// <summary>The mark of the wrench nearest to the torque is outside its tolerance.</summary>
public sealed class SettingOffTheScale : IProcedureRule
{
    public static RuleInfo Info { get; } = new("setting-off-the-scale", "Tools", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var use in WrenchSettings.In(scope))
        {
            // no scale, or a torque without a tolerance to miss
            if (use.Wrench.Scale is not { } scale || use.Torque.Tolerance is null)
                continue;
            var full = Passes.Plan(use.Torque, [new TorquePass(1m, false)], use.Wrench, use.Job.Adapter).FirstOrDefault();
            // off the range is another fault; within the tolerance is what is asked
            if (full is not { Within: false, Dial: { } dial, Gets: { } gets })
                continue;
            var atBolt = use.Job.Adapter is null ? "" : $", {gets.ToFigures(3)} at the bolt";
            findings.Add(new Finding(
                Info,
                use.Job.At,
                $"The mark of {use.Wrench.Id.Value} nearest to {full.Setting.Value.ToFigures(3)} is {dial}{atBolt}; {use.Job.Group.Id.Value} need {use.Torque}.",
                "A wrench is set to a mark and not between two. Every bolt comes out wrong by the same amount, and the sheet says it is right.",
                $"Name a wrench with finer marks; steps of {scale.Value} are too coarse for ± {use.Torque.Tolerance}.")
            {
                Further = [new FurtherPlace(scale.At, $"steps of {scale.Value}"), new FurtherPlace(use.Job.Group.Torque!.Value.At, $"{use.Torque}")],
            });
        }
    }
}
