using Witnessmark.Engineering;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Tools;

/// <summary>The scale of the wrench is in another unit than the torque.</summary>
public sealed class WrenchInOtherUnit : IProcedureRule
{
    public static RuleInfo Info { get; } = new("wrench-in-other-unit", "Tools", Severity.Remark);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var use in WrenchSettings.In(scope))
        {
            // nothing is known about its scale
            if ((use.Wrench.Scale?.Value.Unit ?? use.Wrench.Range?.Value.Unit) is not { Kind: "torque" } unit)
                continue;
            // the unit on the sheet is the one on the wrench
            if (unit == use.Torque.Target.Unit)
                continue;
            var onScale = use.Setting.In(unit);
            var slipped = onScale.Number == 0 ? 0 : use.Setting.Number / onScale.Number;
            findings.Add(
                Info,
                use.Job.At,
                $"{use.Wrench.Id.Value} is marked in {unit}, and {use.Job.Group.Id.Value} are given in {use.Torque.Target.Unit}: {use.Setting.ToFigures(3)} is {onScale.ToFigures(3)} on its scale.",
                $"Whoever dials the number of the data sheet on this scale gets {Figures.Percent(slipped)} of the torque.",
                $"The sheet prints the setting in {unit}. A wrench marked in {use.Torque.Target.Unit} leaves nothing to mix up.",
                new FurtherPlace((use.Wrench.Scale?.At ?? use.Wrench.Range?.At)!.Value, $"marked in {unit}"));
        }
    }
}
