using Witnessmark.Engineering;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Checking.Rules.Torque;

/// <summary>A torque may be off by more than a tenth.</summary>
public sealed class ToleranceTooWide : ISheetRule
{
    /// <summary>Of the target. Common practice; a calibrated wrench holds 4 %.</summary>
    private const decimal Widest = 0.10m;

    public static RuleInfo Info { get; } = new("tolerance-too-wide", "Torque", Severity.Query);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var group in machine.Fasteners)
        {
            // no torque, no tolerance, or no target to hold it against
            if (group.Torque is not { } torque || torque.Value is not { Tolerance: { } tolerance, Target: { Number: > 0 } target })
                continue;
            // a tenth or less
            if (tolerance.Number <= target.Number * Widest)
                continue;
            // rounded down: rounded up it would be too wide again
            var tenth = new Quantity(decimal.Round(target.Number * Widest, Math.Max(target.Decimals, tolerance.Decimals), MidpointRounding.ToZero), target.Unit);
            findings.Add(
                Info,
                torque.At,
                $"{group.Id.Value} may be off by {tolerance} on {target}, which is {Figures.Percent(tolerance.Number / target.Number)}.",
                "Two bolts side by side, one at each end of that, clamp so differently that the joint sits crooked.",
                $"A calibrated wrench holds 4 %. Look the tolerance up again; a tenth would be ± {tenth}.");
        }
    }
}
