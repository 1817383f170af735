using Witnessmark.Checking.Wording;
using Witnessmark.Engineering;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Rules.Tools;

/// <summary>An early pass asks for less than the wrench can be set to.</summary>
public sealed class PassBelowWrench : IProcedureRule
{
    public static RuleInfo Info { get; } = new("pass-below-wrench", "Tools", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var use in WrenchSettings.In(scope))
        {
            // without a lowest mark nothing can be below it
            if (use.Wrench.Range is not { Value: { Low: { Value: { Unit.Kind: "torque" } lowest } } } range)
                continue;
            // the full torque off the scale is the nearer cause
            if (!range.Value.Contains(use.Setting))
                continue;
            var first = Passes.Plan(use.Torque, use.Passes(scope), use.Wrench, use.Job.Adapter)
                .FirstOrDefault(p => p.Dial is null && p.Setting.Value.CompareTo(lowest) < 0);
            // every pass can be set, or is so near the lowest mark that this is its nearest
            if (first is null)
                continue;
            var asks = Measures.InBoth(first.Setting.Value.ToFigures(3));
            var least = Figures.Percent(LeastShare(lowest.In(use.Setting.Unit).Number / use.Setting.Number));
            findings.Add(
                Info,
                use.Job.At,
                $"Pass {first.Number} of {use.Job.Group.Id.Value}, {Figures.Percent(first.Pass.Share)}, asks for {asks} on {use.Wrench.Id.Value}, which begins at {lowest}.",
                "What cannot be dialled is done by feel, and the joint is pulled crooked before the wrench is ever used.",
                $"Give the group passes of its own that begin at {least} or more, or name a smaller wrench for this pass.",
                new FurtherPlace(range.At, $"begins at {lowest}"));
        }
    }

    /// <summary>To the next whole percent, upward: rounded down it would be off the scale again.</summary>
    private static decimal LeastShare(decimal share) => Math.Ceiling(share * 100) / 100;
}
