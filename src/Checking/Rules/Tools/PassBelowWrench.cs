using Witnessmark.Checking.Rules.Fasteners;
using Witnessmark.Engineering;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Tools;

/// <summary>An early pass asks for less than the wrench can be set to.</summary>
public sealed class PassBelowWrench : IProcedureRule
{
    public static RuleInfo Info { get; } = new("pass-below-wrench", "Tools", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        // the same bolts with the same wrench in several steps are one cause
        foreach (var use in WrenchSettings.In(scope).DistinctBy(u => (u.Job.Group.Id.Value, u.Wrench.Id.Value, u.Job.Adapter?.Id.Value)))
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
            findings.Add(
                Info,
                use.Job.At,
                $"Pass {first.Number} of {use.Job.Group.Id.Value}, {Figures.Percent(first.Pass.Share)}, asks for {asks} on {use.Wrench.Id.Value}, which begins at {lowest}.",
                "What cannot be dialled is done by feel, and the joint is pulled crooked before the wrench is ever used.",
                PutRight(lowest.In(use.Setting.Unit).Number / use.Setting.Number),
                new FurtherPlace(range.At, $"begins at {lowest}"));
        }
    }

    /// <param name="share">Of the full torque, at the lowest mark.</param>
    private static string PutRight(decimal share)
    {
        // to the next whole percent, upward: rounded down it would be off the scale again
        var least = Math.Ceiling(share * 100) / 100;
        return least <= FirstPassTooHigh.Highest
            ? $"Give the group passes of its own that begin at {Figures.Percent(least)} or a little more, or name a smaller wrench for this pass."
            : $"Name a smaller wrench for this pass: the lowest mark of this one is {Figures.Percent(least)} of the torque, too much to begin with.";
    }
}
