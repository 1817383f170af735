using Witnessmark.Engineering;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Tools;

/// <summary>A torque lies on the scale of its wrench, but in the part that the house does not trust.</summary>
public sealed class WrenchAtEndOfScale : IProcedureRule
{
    public static RuleInfo Info { get; } = new("wrench-at-end-of-scale", "Tools", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        var limits = scope.Library.Workshop.Limits;
        foreach (var use in WrenchSettings.In(scope))
        {
            // without a range nothing is known about the wrench
            if (use.Wrench.Range is not { } range || WrenchRange.Check(use.Wrench, use.Setting, limits) is not { } fit)
                continue;
            // in the trusted part, or off the scale altogether
            if (fit.Broken is not (WrenchBound.BelowHouseShare or WrenchBound.AboveHouseShare))
                continue;
            var fitting = use.Fitting(scope).ToList();
            var greatest = range.Value.High!.Value.Value;
            var trusted = $"{Figures.Percent(limits.WrenchShare.Low)} to {Figures.Percent(limits.WrenchShare.High)}";
            findings.Add(
                Info,
                use.Job.At,
                $"{use.Job.Group.Id.Value} need {Measures.InBoth(use.Setting)}, which is {Figures.Percent(fit.Share, 1)} of the {greatest} of {use.Wrench.Id.Value}; the house trusts {trusted}.",
                "A wrench holds its 4 % where it is calibrated. Toward the end of the scale one division is a large share of the torque.",
                fitting.Count > 0 ? $"{Say.Or(fitting)} has it in the trusted part of its scale." : $"A wrench with {use.Setting} between a fifth and the end of its scale is better.",
                new FurtherPlace(range.At, $"trusted from {fit.Trusted.Low!.Value.Value.ToFigures(3).NumberText} to {fit.Trusted.High!.Value.Value.ToFigures(3)}"));
        }
    }
}
