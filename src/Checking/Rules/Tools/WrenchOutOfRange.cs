using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Tools;

/// <summary>A torque lies off the scale of the wrench that is named for it.</summary>
public sealed class WrenchOutOfRange : IProcedureRule
{
    public static RuleInfo Info { get; } = new("wrench-out-of-range", "Tools", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var use in WrenchSettings.In(scope))
        {
            // without a range nothing is known about the wrench
            if (use.Wrench.Range is not { } range || WrenchRange.Check(use.Wrench, use.Setting, scope.Library.Workshop.Limits) is not { } fit)
                continue;
            // on the scale; near its end is a question of its own
            if (fit.Broken is not (WrenchBound.BelowLowestMark or WrenchBound.AboveGreatestMark))
                continue;
            var fitting = use.Fitting(scope).ToList();
            var above = fit.Broken == WrenchBound.AboveGreatestMark;
            findings.Add(
                Info,
                use.Job.At,
                $"{use.Job.Group.Id.Value} need {Measures.InBoth(use.Setting)} on {use.Wrench.Id.Value}, which is marked from {range.Value}.",
                above
                    ? "The wrench stops short of the torque. Whoever uses it goes on by feel, or pulls with a pipe and ruins the wrench."
                    : "Below its lowest mark a wrench clicks late or not at all, and the bolt gets far more than was asked for.",
                fitting.Count > 0 ? $"Name a wrench that reaches it: {Say.Or(fitting)}." : $"Put a wrench on the tool list that has {use.Setting} between a fifth of its scale and its end.",
                new FurtherPlace(range.At, $"marked from {range.Value}"),
                new FurtherPlace(use.Job.Group.Torque!.Value.At, $"{use.Torque}"));
        }
    }
}
