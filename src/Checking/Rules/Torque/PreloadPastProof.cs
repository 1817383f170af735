using Witnessmark.Engineering;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Torque;

/// <summary>A torque suits its bolts, but with scatter of wrench and friction some are pulled too near to proof.</summary>
public sealed class PreloadPastProof : ISheetRule
{
    public static RuleInfo Info { get; } = new("preload-past-proof", "Torque", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var torque in TorqueCase.Of(machine, library))
        {
            // outside the window is the nearer cause
            if (torque.GoesAbove || torque.GoesBelow)
                continue;
            // without sensible scatter nothing can be said; within the limit all is well
            if (PreloadScatter.Of(torque.Window, torque.Torque.Value, torque.Limits) is not { } scatter || scatter.RootSumSquare.Value <= torque.Limits.TightenedProof)
                continue;
            var limit = Figures.Percent(torque.Limits.TightenedProof);
            findings.Add(new Finding(
                Info,
                torque.Torque.At,
                $"With {Measures.InBoth(torque.Torque.Value)}, {torque.Group.Id.Value} may reach {Figures.Percent(scatter.RootSumSquare.Value, 1)} of proof load; the house allows {limit}.",
                "Tolerance, wrench and friction scatter together. The bolts that get the most of it stretch for good and clamp less than before.",
                PutRight(torque))
            {
                Worked =
                [
                    .. torque.Worked,
                    $"to be expected: {scatter.RootSumSquare.Line}",
                    $"worst case, everything at its end: {scatter.WorstCase.Line}",
                ],
            });
        }
    }

    private static string PutRight(TorqueCase torque) => torque.FittingFrom(torque.Torque.Value.Target) is { } fits
        ? $"`{fits}` fits: {Figures.Percent(torque.Reaches(fits) ?? 0, 1)} for {torque.Bolt}. A tighter tolerance, or a k from a test of this joint, helps as well."
        : $"Tighten the tolerance, or take k from a test of this joint; {torque.WindowText} is the window for {torque.Bolt}.";
}
